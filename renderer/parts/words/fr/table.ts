import type { InterfaceWords } from '../catalogue.ts';

export const table: InterfaceWords['table'] = {
  rowHead: 'Ligne',
  newRow: 'Ligne suivante',
  row: (n) => `Ligne ${n}`,
  more: (n) => `Suite de la ligne ${n}`,
  moreNew: 'Suite de la ligne suivante',
  moveUp: 'Monter',
  moveDown: 'Descendre',
  remove: 'Supprimer la ligne',
  sort: 'Ranger par profondeur',
  cell: (label, row) => `${label}, ligne ${row}`,
  keys: 'Entrée passe à la suite. Ctrl avec Entrée ouvre le reste de la ligne, Échap en revient. Alt avec flèche haut ou bas déplace la ligne, Ctrl avec Suppr la supprime. Des lignes copiées d’un tableur peuvent être collées.',
  removeItem: (title) => `Supprimer ${title}`,
  choose: '–',
};
