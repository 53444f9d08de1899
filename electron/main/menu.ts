import { Menu, type MenuItemConstructorOptions } from 'electron';
import type { DesktopWords } from './words.ts';

/** What the menu can ask for. */
export interface MenuActions {
  newArchive(): void;
  openArchive(): void;
  newWindow(): void;
  /** The program's own undo, over all that was done in the well, not that of one text field. */
  undo(): void;
  redo(): void;
}

/** Undo and redo show their keys, but the page hears these itself. */
function editMenu(actions: MenuActions, words: DesktopWords): MenuItemConstructorOptions {
  const inPage = { registerAccelerator: false };
  return {
    label: words.edit,
    submenu: [
      { label: words.undo, accelerator: 'CmdOrCtrl+Z', ...inPage, click: actions.undo },
      { label: words.redo, accelerator: 'CmdOrCtrl+Shift+Z', ...inPage, click: actions.redo },
      { type: 'separator' },
      { role: 'cut', label: words.cut },
      { role: 'copy', label: words.copy },
      { role: 'paste', label: words.paste },
      { role: 'selectAll', label: words.selectAll },
    ],
  };
}

function fileMenu(
  actions: MenuActions,
  words: DesktopWords,
  platform: NodeJS.Platform,
): MenuItemConstructorOptions {
  const quit: MenuItemConstructorOptions = { role: 'quit', label: words.quit };
  return {
    label: words.file,
    submenu: [
      { label: words.newArchive, click: actions.newArchive },
      { label: words.openArchive, accelerator: 'CmdOrCtrl+O', click: actions.openArchive },
      { type: 'separator' },
      { label: words.newWindow, accelerator: 'CmdOrCtrl+Shift+N', click: actions.newWindow },
      { role: 'close', label: words.closeWindow },
      ...(platform === 'darwin' ? [] : [quit]),
    ],
  };
}

function viewMenu(words: DesktopWords): MenuItemConstructorOptions {
  return {
    label: words.view,
    submenu: [
      { role: 'zoomIn', label: words.larger },
      { role: 'zoomOut', label: words.smaller },
      { role: 'resetZoom', label: words.usualSize },
      { role: 'togglefullscreen', label: words.fullScreen },
    ],
  };
}

/** The native menu: files, editing, the size of what is seen. */
export function menuTemplate(
  actions: MenuActions,
  words: DesktopWords,
  platform: NodeJS.Platform,
): MenuItemConstructorOptions[] {
  return [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } as const] : []),
    fileMenu(actions, words, platform),
    editMenu(actions, words),
    viewMenu(words),
    { role: 'windowMenu', label: words.window },
  ];
}

/** Puts the menu in its place for all windows. */
export function setMenu(actions: MenuActions, words: DesktopWords): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(actions, words, process.platform)));
}
