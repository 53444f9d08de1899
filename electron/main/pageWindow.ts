import { BrowserWindow, type BrowserWindowConstructorOptions } from 'electron';
import { pageAddress } from './pageAddress.ts';

/** A window whose page has no more than a web page has, and the preload's two functions. */
export function windowOptions(preload: string): BrowserWindowConstructorOptions {
  return {
    width: 1440,
    height: 900,
    show: false,
    backgroundColor: '#ffffff',
    title: 'Borefolio',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      allowRunningInsecureContent: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  };
}

/** Opens a window on the page; it is shown when there is something to see. */
export function openPageWindow(preload: string): BrowserWindow {
  const window = new BrowserWindow(windowOptions(preload));
  window.once('ready-to-show', () => window.show());
  void window.loadURL(pageAddress);
  return window;
}
