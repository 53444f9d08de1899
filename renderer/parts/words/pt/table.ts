import type { InterfaceWords } from '../catalogue.ts';

export const table: InterfaceWords['table'] = {
  rowHead: 'Linha',
  newRow: 'Linha seguinte',
  row: (n) => `Linha ${n}`,
  more: (n) => `Mais da linha ${n}`,
  moreNew: 'Mais da linha seguinte',
  sort: 'Ordenar por profundidade',
  sortByTime: 'Ordenar por tempo',
  cell: (label, row) => `${label}, linha ${row}`,
  removeItem: (title) => `Eliminar ${title}`,
  choose: '–',
};
