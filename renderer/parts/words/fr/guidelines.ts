import type { InterfaceWords } from '../catalogue.ts';

export const guidelines: InterfaceWords['guidelines'] = {
  title: 'Valeurs guides de l’eau',
  shipped: 'avec le programme',
  import: 'Importer des valeurs …',
  importFile: 'Valeurs guides d’un fichier',
  export: 'Exporter',
  exportOf: (name) => `Exporter : ${name}`,
  remove: 'Supprimer',
  removeOf: (name) => `Supprimer : ${name}`,
  askRemove: (name) =>
    `Supprimer « ${name} » ? Les forages qui le nomment seront dès lors comparés aux valeurs générales.`,
  removeIt: 'Le supprimer',
  keepIt: 'Le garder',
  askReplace: (name, version) =>
    `« ${name} » est déjà ici. Le remplacer par la version ${version} du fichier ?`,
  replaceIt: 'Le remplacer',
  imported: (name) => `« ${name} » a été repris du fichier.`,
  removed: (name) => `« ${name} » a été supprimé.`,
};
