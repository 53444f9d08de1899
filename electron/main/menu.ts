import { Menu, type MenuItemConstructorOptions } from 'electron';

/** What the menu can ask for. */
export interface MenuActions {
  newArchive(): void;
  openArchive(): void;
  newWindow(): void;
}

/** The native menu: files, editing, the size of what is seen. */
export function menuTemplate(
  actions: MenuActions,
  platform: NodeJS.Platform,
): MenuItemConstructorOptions[] {
  const file: MenuItemConstructorOptions = {
    label: 'File',
    submenu: [
      { label: 'New archive…', click: actions.newArchive },
      { label: 'Open archive…', accelerator: 'CmdOrCtrl+O', click: actions.openArchive },
      { type: 'separator' },
      { label: 'New window', accelerator: 'CmdOrCtrl+Shift+N', click: actions.newWindow },
      { role: 'close' },
      ...(platform === 'darwin' ? [] : [{ role: 'quit' } as const]),
    ],
  };
  const view: MenuItemConstructorOptions = {
    label: 'View',
    submenu: [
      { role: 'zoomIn' },
      { role: 'zoomOut' },
      { role: 'resetZoom' },
      { role: 'togglefullscreen' },
    ],
  };
  const own: MenuItemConstructorOptions[] = platform === 'darwin' ? [{ role: 'appMenu' }] : [];
  return [...own, file, { role: 'editMenu' }, view, { role: 'windowMenu' }];
}

/** Puts the menu in its place for all windows. */
export function setMenu(actions: MenuActions): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(actions, process.platform)));
}
