import type { InterfaceWords } from '../catalogue.ts';

export const table: InterfaceWords['table'] = {
  rowHead: 'Ligne',
  newRow: 'Ligne suivante',
  row: (n) => `Ligne ${n}`,
  more: (n) => `Suite de la ligne ${n}`,
  moreNew: 'Suite de la ligne suivante',
  sort: 'Ranger par profondeur',
  sortByTime: 'Ranger par temps',
  cell: (label, row) => `${label}, ligne ${row}`,
  removeItem: (title) => `Supprimer ${title}`,
  choose: '–',
};
