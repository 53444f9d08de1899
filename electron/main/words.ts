import type { Language } from '../../core/base/language.ts';

/** What the desktop program says outside its page. */
export interface DesktopWords {
  readonly file: string;
  readonly newArchive: string;
  readonly openArchive: string;
  readonly newWindow: string;
  readonly closeWindow: string;
  readonly quit: string;
  readonly edit: string;
  readonly undo: string;
  readonly redo: string;
  readonly cut: string;
  readonly copy: string;
  readonly paste: string;
  readonly selectAll: string;
  readonly view: string;
  readonly larger: string;
  readonly smaller: string;
  readonly usualSize: string;
  readonly fullScreen: string;
  readonly window: string;
  readonly archiveKind: string;
  readonly notOpened: string;
}

const english: DesktopWords = {
  file: 'File',
  newArchive: 'New archive…',
  openArchive: 'Open archive…',
  newWindow: 'New window',
  closeWindow: 'Close window',
  quit: 'Quit',
  edit: 'Edit',
  undo: 'Undo',
  redo: 'Redo',
  cut: 'Cut',
  copy: 'Copy',
  paste: 'Paste',
  selectAll: 'Select all',
  view: 'View',
  larger: 'Larger',
  smaller: 'Smaller',
  usualSize: 'Usual size',
  fullScreen: 'Full screen',
  window: 'Window',
  archiveKind: 'Borefolio archive',
  notOpened: 'The archive was not opened',
};

const french: DesktopWords = {
  file: 'Fichier',
  newArchive: 'Nouvelle archive…',
  openArchive: 'Ouvrir une archive…',
  newWindow: 'Nouvelle fenêtre',
  closeWindow: 'Fermer la fenêtre',
  quit: 'Quitter',
  edit: 'Édition',
  undo: 'Annuler',
  redo: 'Rétablir',
  cut: 'Couper',
  copy: 'Copier',
  paste: 'Coller',
  selectAll: 'Tout sélectionner',
  view: 'Affichage',
  larger: 'Plus grand',
  smaller: 'Plus petit',
  usualSize: 'Taille habituelle',
  fullScreen: 'Plein écran',
  window: 'Fenêtre',
  archiveKind: 'Archive Borefolio',
  notOpened: 'L’archive n’a pas été ouverte',
};

const portuguese: DesktopWords = {
  file: 'Ficheiro',
  newArchive: 'Novo arquivo…',
  openArchive: 'Abrir arquivo…',
  newWindow: 'Nova janela',
  closeWindow: 'Fechar a janela',
  quit: 'Sair',
  edit: 'Editar',
  undo: 'Anular',
  redo: 'Refazer',
  cut: 'Cortar',
  copy: 'Copiar',
  paste: 'Colar',
  selectAll: 'Selecionar tudo',
  view: 'Ver',
  larger: 'Maior',
  smaller: 'Menor',
  usualSize: 'Tamanho habitual',
  fullScreen: 'Ecrã inteiro',
  window: 'Janela',
  archiveKind: 'Arquivo Borefolio',
  notOpened: 'O arquivo não foi aberto',
};

export const desktopWords: Readonly<Record<Language, DesktopWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};
