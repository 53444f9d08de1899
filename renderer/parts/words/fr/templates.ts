import type { templates as english } from '../en/templates.ts';

export const templates: typeof english = {
  title: 'Modèles de papier',
  about:
    'Un modèle met les noms, l’adresse et les logos d’une organisation en tête des papiers, et dit les libellés et la réserve à sa façon. C’est un fichier JSON ; choisissez-le avec les images qu’il nomme.',
  issued: 'Les papiers délivrés restent tels qu’ils ont été faits.',
  add: 'Prendre un modèle d’un fichier …',
  addPictures: 'Choisir ses images …',
  giveUp: 'Y renoncer',
  waits: (name, pictures) => `Il manque encore des images à ${name} : ${pictures}.`,
  several:
    'Plusieurs modèles ont été choisis. Prenez-les l’un après l’autre, chacun avec ses images.',
  noTemplate:
    'Aucun modèle ne se trouve parmi ces fichiers. Choisissez son fichier JSON avec les images.',
  empty: 'Il n’y a pas encore de modèle. Les papiers n’ont pas d’en-tête.',
  usual: 'Les papiers de cette archive sont faits avec',
  none: 'aucun modèle',
  changed: (moment) => `pris le ${moment}`,
  unread: 'illisible.',
  remove: 'Retirer',
  removeOf: (name) => `Retirer : ${name}`,
  keep: 'Laisser tel quel',
  askRemoveTitle: 'Retirer ce modèle ?',
  askRemove: (name) =>
    `${name} quitte l’archive ; son fichier sur votre disque reste. Les papiers faits avec lui restent aussi.`,
  askReplaceTitle: 'Remplacer ce modèle ?',
  askReplace: (name) => `${name} est déjà dans l’archive. Le fichier prend sa place.`,
  replace: 'Remplacer',
  taken: (name) => `${name} a été pris dans l’archive.`,
  chose: (name) => `Les papiers sont faits avec ${name}.`,
  choseNone: 'Les papiers sont faits sans modèle.',
  removed: (name) => `${name} a été retiré.`,
};
