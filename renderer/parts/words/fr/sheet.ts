import type { InterfaceWords } from '../catalogue.ts';

export const sheet: InterfaceWords['sheet'] = {
  title: 'Coupe de récolement',
  toolbar: 'Feuille',
  viewport: (page, pages) =>
    `Coupe de récolement, page ${page} sur ${pages}. Plus et moins agrandissent et réduisent, 0 montre la page entière, les flèches déplacent, Page haut et Page bas tournent. Tout ce qui est montré ici se trouve aussi dans les tableaux.`,
  paper: 'Papier',
  layingOut: 'Plan de pose',
  committee: 'Fiche du comité',
  secondLanguage: 'Deuxième langue',
  oneLanguage: 'une langue',
  language: 'Langue de la feuille',
  zoomIn: 'Agrandir',
  zoomOut: 'Réduire',
  fitWidth: 'Largeur',
  fitPage: 'Page entière',
  previous: 'Page précédente',
  next: 'Page suivante',
  page: (page, pages) => `Page ${page} sur ${pages}`,
  export: 'Exporter en PDF',
  exporting: 'Préparation du PDF …',
  exported: (name) => `${name} est prêt.`,
  exportFailed: (sentence) => `Pas de PDF : ${sentence}`,
  broken:
    'La feuille ne peut pas être dessinée avec la dernière saisie. Elle est montrée telle qu’elle était avant.',
  selected: 'Sélectionné',
  splitter: 'Largeur des tableaux',
};
