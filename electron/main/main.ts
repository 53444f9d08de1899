/** The desktop program: one instance, one open archive, as many windows as are wanted. */
import path from 'node:path';
import { app, BrowserWindow, session } from 'electron';
import { languageFor } from '../../core/base/language.ts';
import { eventChannel } from '../../core/contract/host.ts';
import { settingsPlace } from '../files/settingsPlace.ts';
import { identitiesBeside, identitiesIn } from '../service/identityStore.ts';
import { settingsIn } from '../service/settingsFile.ts';
import {
  archiveInArguments,
  askForArchive,
  askForNewArchive,
  noteArchive,
  usualArchive,
} from './archiveFile.ts';
import { answerCalls } from './calls.ts';
import { newDesk } from './desk.ts';
import { keepHome, keepShut } from './lockDown.ts';
import { setMenu } from './menu.ts';
import { declarePageScheme, servePage } from './pageProtocol.ts';
import { openPageWindow } from './pageWindow.ts';
import { forgetPrints } from '../service/systemPrinting.ts';
import { desktopWords } from './words.ts';

// Both lie beside the bundled program; see electron/make/bundleElectron.ts.
const preload = path.join(import.meta.dirname, 'preload.cjs');
const pageFolder = path.join(import.meta.dirname, '../page');

const settings = settingsIn(settingsPlace());
const words = () => desktopWords[settings.read().language ?? languageFor([app.getLocale()])];
const identities = identitiesIn(identitiesBeside(settingsPlace()));
const desk = newDesk({ settings, identities, words, onSettings: showMenu });

/** To the window that the menu was opened from. */
function tellFocused(name: 'page.undo' | 'page.redo'): void {
  BrowserWindow.getFocusedWindow()?.webContents.send(eventChannel, { name, data: {} });
}

/** The menu in the language in use; made again when that changes. */
function showMenu(): void {
  setMenu(
    {
      newArchive: () => void askForNewArchive(words()).then(openArchive),
      openArchive: () => void askForArchive(words()).then(openArchive),
      newWindow: () => void openPageWindow(preload),
      undo: () => tellFocused('page.undo'),
      redo: () => tellFocused('page.redo'),
    },
    words(),
  );
}

async function openArchive(file: string | undefined): Promise<boolean> {
  if (file === undefined || !(await desk.open(file))) return false;
  await noteArchive(file);
  return true;
}

function showWindow(): void {
  const [window] = BrowserWindow.getAllWindows();
  if (!window) return void openPageWindow(preload);
  if (window.isMinimized()) window.restore();
  window.focus();
}

async function openFromElsewhere(words: readonly string[], folder: string): Promise<void> {
  await openArchive(archiveInArguments(words, folder));
  showWindow();
}

async function start(): Promise<void> {
  keepShut(session.defaultSession);
  servePage(pageFolder);
  answerCalls(desk.service, (name, thrown) => console.error(name, thrown));
  showMenu();
  const named = archiveInArguments(process.argv.slice(1), process.cwd());
  const opened =
    (await openArchive(named ?? usualArchive())) ||
    (await openArchive(await askForArchive(words())));
  if (!opened) return app.quit();
  openPageWindow(preload);
}

function quitOnceClosed(): void {
  let closed = false;
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void desk.close().finally(() => {
      closed = true;
      forgetPrints();
      app.quit();
    });
  });
}

function run(): void {
  app.enableSandbox();
  declarePageScheme();
  quitOnceClosed();
  app.on('web-contents-created', (_event, contents) => keepHome(contents));
  app.on(
    'second-instance',
    (_event, words, folder) => void openFromElsewhere(words.slice(1), folder),
  );
  app.on('window-all-closed', () => app.quit());
  void app.whenReady().then(start);
}

if (app.requestSingleInstanceLock()) run();
else app.quit();
