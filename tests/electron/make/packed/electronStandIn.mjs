/**
 * As much of Electron as the packed program needs to start. When its window asks for the page,
 * the stand-in calls as a page would, prints what came back as JSON, and ends the program.
 */
import { tmpdir } from 'node:os';

const handlers = new Map();
const nothing = () => undefined;
const page = { senderFrame: { url: 'borefolio://page/', parent: null } };

/** @param {string} name @param {unknown} args */
const call = (name, args) => handlers.get('borefolio:call')(page, name, args);

async function actAsPage() {
  const created = await call('wells.create', { record: { schemaVersion: 1 } });
  const sheet = await call('papers.asBuilt', { id: created.value.id, paper: 'A4' });
  const response = await handlers.get('borefolio')({ url: 'borefolio://page/', method: 'GET' });
  const start = Buffer.from(sheet.value.pdf, 'base64').toString('latin1', 0, 5);
  console.log(JSON.stringify({ start, page: await response.text() }));
  process.exit(0);
}

export class BrowserWindow {
  static getAllWindows = () => [];
  once = nothing;
  loadURL = actAsPage;
}

export const app = {
  requestSingleInstanceLock: () => true,
  enableSandbox: nothing,
  on: nothing,
  quit: () => process.exit(1),
  whenReady: async () => undefined,
  getPath: () => tmpdir(),
  getLocale: () => 'en-GB',
};
/** @param {string} name @param {Function} handler */
const handle = (name, handler) => void handlers.set(name, handler);
export const ipcMain = { handle };
export const protocol = { handle, registerSchemesAsPrivileged: nothing };
export const Menu = { setApplicationMenu: nothing, buildFromTemplate: nothing };
export const dialog = {
  showErrorBox: console.error,
  showMessageBox: async () => undefined,
  showOpenDialog: async () => ({ filePaths: [] }),
};
export const session = {
  defaultSession: {
    setPermissionRequestHandler: nothing,
    setPermissionCheckHandler: nothing,
    setDevicePermissionHandler: nothing,
    webRequest: { onBeforeRequest: nothing },
  },
};

export const shell = {
  openPath: async () => '',
};
