import type { InterfaceWords } from '../catalogue.ts';

export const table: InterfaceWords['table'] = {
  rowHead: 'Linha',
  newRow: 'Linha seguinte',
  row: (n) => `Linha ${n}`,
  more: (n) => `Mais da linha ${n}`,
  moreNew: 'Mais da linha seguinte',
  moveUp: 'Subir',
  moveDown: 'Descer',
  remove: 'Eliminar a linha',
  sort: 'Ordenar por profundidade',
  cell: (label, row) => `${label}, linha ${row}`,
  keys: 'Enter avança. Ctrl com Enter abre o resto da linha, Esc volta. Alt com seta para cima ou para baixo desloca a linha, Ctrl com Delete elimina-a. Podem colar-se linhas copiadas de uma folha de cálculo.',
  removeItem: (title) => `Eliminar ${title}`,
  choose: '–',
};
