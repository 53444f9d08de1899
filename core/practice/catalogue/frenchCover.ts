import type { coverCodes } from '../rules/cover/codes.ts';
import type { FindingText } from './texts.ts';

/** What stands between wall and casing. */
export const frenchCover: Readonly<Record<keyof typeof coverCodes, FindingText>> = {
  'pack.bare': {
    title: 'Crépine sans massif filtrant',
    sentence:
      'Le long de la crépine, de {fromM} m à {toM} m, aucun massif n’est noté, mais : {fill}.',
    why: 'Sans massif, le terrain meuble passe par les fentes et use la pompe et la crépine ; l’argile ou le ciment devant les fentes les bouche.',
    todo: 'Mettre ou compléter le massif avant de verser quoi que ce soit dessus. Si l’ouvrage est fini, surveiller le sable et le débit, et reprendre le développement.',
  },
  'pack.low': {
    title: 'Massif filtrant arrêté trop bas',
    sentence:
      'Le massif dépasse de {aboveM} m le haut de la crépine, qui est à {screenM} m ; il en faut {wantedM} m, et moins de {graveM} m ne suffit pas au tassement.',
    why: 'Le massif se tasse pendant le développement et l’usage ; ce qui descend ne doit ni découvrir les fentes ni amener le bouchon devant elles.',
    todo: 'Sonder le sommet du massif après le pistonnage et le compléter avant de poser le bouchon.',
  },
  'clay.thin': {
    title: 'Trop peu d’argile sur le massif',
    sentence:
      'Sur le massif, dont le sommet est à {packM} m, se trouvent {lengthM} m d’argile ou de coulis ; il en faut {wantedM} m, et moins de {graveM} m ne ferme rien.',
    why: 'Le massif est un chemin ouvert vers la crépine : l’eau des couches supérieures et de la surface y descend si rien d’étanche ne le couvre.',
    todo: 'Poser des boulettes d’argile, de la bentonite ou du coulis sur le sommet sondé du massif, laisser gonfler l’argile et sonder à nouveau.',
  },
  'seal.none': {
    title: 'Pas de joint sanitaire',
    sentence:
      'Dans les {wantedM} m du haut, ni argile ni coulis ne se trouve contre la paroi du trou, mais : {fill}.',
    why: 'L’eau souillée de la surface descend le long du tubage jusqu’à la crépine.',
    todo: 'Dégager le haut de l’annulaire et le remplir d’argile ou de coulis de ciment en remontant depuis son pied ; d’ici là, ne pas remettre l’ouvrage.',
  },
  'seal.short': {
    title: 'Joint sanitaire trop court',
    sentence:
      'Le joint sanitaire va de {fromM} m à {toM} m ; il doit commencer à {startM} m au plus bas et descendre à {wantedM} m.',
    why: 'La terre meuble, les racines et les terriers mènent l’eau souillée au-delà d’un joint trop court.',
    todo: 'Ajouter de l’argile ou du coulis là où il en manque, ou corriger les profondeurs.',
  },
  'open.above': {
    title: 'Annulaire laissé libre',
    sentence: 'L’annulaire est libre de {fromM} m à {toM} m, au-dessus de l’entrée de l’eau.',
    why: 'Un annulaire libre mène l’eau d’une couche dans une autre, et s’éboule en terrain meuble.',
    todo: 'Le remplir, avec de l’argile ou du coulis là où des couches doivent être séparées.',
  },
  'aquifers.joined': {
    title: 'Deux nappes reliées par l’annulaire',
    sentence:
      'Le terrain de {fromM} m à {toM} m retient l’eau sur {thicknessM} m (à partir de {limitM} m, cela compte), mais un passage le traverse d’une nappe à l’autre : {fill}.',
    why: 'L’eau souillée, salée ou ferrugineuse d’une nappe gagne l’autre, et l’une se vide durablement dans l’autre.',
    todo: 'Fermer l’annulaire à l’argile ou au coulis dans le terrain qui les sépare, s’il est encore accessible ; sinon consulter l’autorité et comparer les deux eaux.',
  },
  'aquifers.screened': {
    title: 'Deux nappes reliées par le tubage',
    sentence:
      'La colonne {string} prend l’eau au-dessus et au-dessous du terrain de {fromM} m à {toM} m, qui retient l’eau sur {thicknessM} m (à partir de {limitM} m, cela compte).',
    why: 'Dans le tubage, l’eau passe d’une nappe à l’autre dès que la pompe s’arrête ; la moins bonne des deux décide.',
    todo: 'Comparer les niveaux et la qualité des deux. S’ils diffèrent, ou si le règlement l’interdit, garder une nappe et fermer l’autre.',
  },
  'gap.narrow': {
    title: 'Espace annulaire étroit',
    sentence:
      'Entre un trou de {holeMm} mm et un tube de {pipeMm} mm, il reste {gapMm} mm de massif ; il en faut {wantedMm} mm, et moins de {graveMm} mm se remplit mal.',
    why: 'Dans un annulaire étroit, le gravier fait pont aux raccords et là où le tubage penche, et le massif est mince d’un côté.',
    todo: 'Garder le tube centré, verser lentement avec de l’eau et sonder souvent. Avant la pose du tubage, mieux vaut un trou plus large ou un tube plus petit.',
  },
  'poured.little': {
    title: 'Moins versé que calculé',
    sentence:
      '{fill} de {fromM} m à {toM} m : {poured} litres versés pour {computed} calculés, soit {percent} % ; au moins {limitPercent} % étaient à attendre.',
    why: 'Un remplissage qui atteint sa hauteur avec trop peu repose sans doute sur un pont avec un vide dessous, ou le trou s’est éboulé.',
    todo: 'Sonder à nouveau, pistonner ou tasser doucement jusqu’à ce que le sommet ne bouge plus, et compléter en comptant ce qui entre.',
  },
  'poured.much': {
    title: 'Plus versé que calculé',
    sentence:
      '{fill} de {fromM} m à {toM} m : {poured} litres versés pour {computed} calculés, soit {percent} % ; au plus {limitPercent} % étaient à attendre.',
    why: 'Le trou y est sans doute affouillé, ou le remplissage se perd dans des fissures ou au-delà de sa place.',
    todo: 'Comparer avec les éboulements et les pertes vus pendant la foration, sonder le sommet après un temps, et corriger le diamètre s’il est mieux connu.',
  },
};
