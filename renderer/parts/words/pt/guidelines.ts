import type { InterfaceWords } from '../catalogue.ts';

export const guidelines: InterfaceWords['guidelines'] = {
  title: 'Valores-guia da água',
  shipped: 'com o programa',
  import: 'Importar valores …',
  importFile: 'Valores-guia de um ficheiro',
  export: 'Exportar',
  exportOf: (name) => `Exportar: ${name}`,
  remove: 'Apagar',
  removeOf: (name) => `Apagar: ${name}`,
  askRemove: (name) =>
    `Apagar «${name}»? Os furos que o indicam passam a ser comparados com os valores gerais.`,
  removeIt: 'Apagá-lo',
  keepIt: 'Mantê-lo',
  askReplace: (name, version) =>
    `«${name}» já está aqui. Substituí-lo pela versão ${version} do ficheiro?`,
  replaceIt: 'Substituí-lo',
  imported: (name) => `«${name}» foi trazido do ficheiro.`,
  removed: (name) => `«${name}» foi apagado.`,
};
