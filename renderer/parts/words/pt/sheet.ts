import type { InterfaceWords } from '../catalogue.ts';

export const sheet: InterfaceWords['sheet'] = {
  title: 'Corte como construído',
  toolbar: 'Folha',
  viewport: (page, pages) =>
    `Corte como construído, página ${page} de ${pages}. Mais e menos ampliam e reduzem, 0 mostra a página inteira, as setas deslocam, Page Up e Page Down viram a página. Tudo o que aqui se mostra está também nas tabelas.`,
  paper: 'Papel',
  layingOut: 'Plano de colocação',
  committee: 'Ficha do comité',
  secondLanguage: 'Segunda língua',
  oneLanguage: 'uma língua',
  language: 'Língua da folha',
  zoomIn: 'Ampliar',
  zoomOut: 'Reduzir',
  fitWidth: 'Largura',
  fitPage: 'Página inteira',
  previous: 'Página anterior',
  next: 'Página seguinte',
  page: (page, pages) => `Página ${page} de ${pages}`,
  export: 'Exportar PDF',
  exporting: 'A fazer o PDF …',
  exported: (name) => `${name} está pronto.`,
  exportFailed: (sentence) => `Não foi feito nenhum PDF: ${sentence}`,
  broken:
    'A folha não pode ser desenhada com o que foi escrito por último. Mostra-se a folha anterior.',
  selected: 'Selecionado',
  splitter: 'Largura das tabelas',
};
