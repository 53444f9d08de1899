import type { ReadingWords } from './reading.ts';

export const readingFrench: ReadingWords = {
  finding: {
    title: 'Trouver un forage',
    says: [
      'Les forages se suivent par district, puis par village, puis par numéro comme on compte : KB-2 vient avant KB-10.',
      'Le sommaire mène aux districts et aux villages ; les index mènent à chaque forage par village, numéro et année. Dans le fichier, une ligne qui finit par un numéro de page est un lien.',
      'Un forage sans numéro se trouve à la fin de son village.',
    ],
  },
  papers: {
    title: 'Ce que contient chaque document',
    each: {
      asBuilt:
        'Coupe de récolement : le terrain et le forage en coupe à une échelle indiquée, avec profondeurs, remplissages, niveaux d’eau, essais, analyses, photos et ce qui reste à examiner.',
      layingOut:
        'Plan de pose : les tubes dans l’ordre de descente, les repères et les remplissages pas à pas.',
      committee:
        'Fiche du comité : pour les usagers du village, avec une image simple, l’entretien au fil de l’année, ce qu’il faut tenir éloigné et qui appeler.',
      attachments:
        'Pièces jointes : les images qu’aucune feuille du classeur ne montre, et la liste des autres fichiers gardés avec le dossier.',
    },
  },
  depths: {
    title: 'Comment les profondeurs sont données',
    says: [
      'Les profondeurs sont en mètres sous le niveau du sol, mesurées le long du trou. Ce qui est au-dessus du sol le dit.',
      'Les lectures faites depuis le haut du tubage ont été ramenées au sol par la hauteur du tubage.',
      'Les altitudes sont celles du sol, au-dessus de la référence écrite à côté.',
      'Les documents de chaque forage disent quelle révision de la fiche ils montrent. L’archive peut en contenir une plus récente.',
    ],
  },
  units: {
    title: 'Unités et signes des chiffres',
    says: [
      'm : mètres. mm : millimètres, pour diamètres et fentes. m³/h : mètres cubes par heure. mg/l : milligrammes par litre.',
      'Un tiret (–) se trouve là où rien n’a été noté : il ne veut pas dire zéro. « < » précède une limite de détection sous laquelle se trouvait un résultat.',
      'La médiane est la valeur du milieu : la moitié des forages est en dessous, l’autre au-dessus.',
    ],
  },
  signs: {
    title: 'Signes de la carte',
    says: [
      'Les positions sont en WGS 84, aussi bonnes qu’elles ont été relevées sur le terrain. Un signe montre à peu près où est un forage, non où creuser.',
    ],
  },
  yields: {
    title: 'Ce qu’est un débit',
    says: [
      'Débit d’exploitation : ce que le forage peut donner, selon les essais, en saison sèche sans trop rabattre l’eau.',
      'Là où les essais ne le disent pas, on lit le débit du dernier essai à débit constant, marqué t ; sinon celui de la pompe en service, marqué p. Ils disent ce qui a été tiré, non ce que le forage supporte.',
    ],
  },
  water: {
    title: 'Qualité de l’eau',
    says: [
      'Les résultats sont comparés aux valeurs guides du jeu nommé. « Au-dessus » dit qu’un résultat dépasse une valeur. Rien ici ne dit que l’eau est potable.',
      'Un prélèvement dit un seul moment : l’eau peut être souillée plus tard. Ce qui n’a pas été analysé n’est pas connu. L’autorité sanitaire décide de ce qui peut être bu.',
    ],
  },
  cautions: {
    title: 'Prudence',
    says: [
      'Les règles locales et celles des autorités de la santé et de l’eau priment sur tout ce qui est dans ce classeur.',
      'Personne ne descend dans un puits ou une fosse sans contrôle des gaz, harnais et équipiers en surface : l’air peut y tuer.',
      'Avant tout travail sur un forage, chercher les lignes électriques et consigner les pompes électriques.',
      'Ne rien mesurer sur un document dont la ligne de contrôle n’a pas la longueur indiquée.',
    ],
  },
};
