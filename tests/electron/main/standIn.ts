import { EventEmitter } from 'node:events';
import { vi } from 'vitest';

/**
 * Stands in for Electron, whose program is not there in tests. What is proven with it is what our
 * side asks of Electron and answers to it, not what Electron then does.
 */
export function electronStandIn() {
  const handlers = new Map<string, (...args: never[]) => unknown>();
  const windows: WindowStandIn[] = [];

  class WindowStandIn extends EventEmitter {
    static getAllWindows = () => windows;
    readonly options: unknown;
    readonly webContents = { send: vi.fn() };
    readonly loadURL = vi.fn(async () => undefined);
    readonly reload = vi.fn();
    readonly show = vi.fn();
    constructor(options: unknown) {
      super();
      this.options = options;
      windows.push(this);
    }
  }

  return {
    handlers,
    windows,
    BrowserWindow: WindowStandIn,
    app: { getPath: vi.fn<(name: string) => string>(), getLocale: () => 'en-GB' },
    shell: { openPath: vi.fn(async () => '') },
    dialog: { showErrorBox: vi.fn(), showMessageBox: vi.fn(async () => undefined) },
    ipcMain: {
      handle: (name: string, handler: (...args: never[]) => unknown) => handlers.set(name, handler),
    },
    protocol: {
      registerSchemesAsPrivileged: vi.fn(),
      handle: (name: string, handler: (...args: never[]) => unknown) => handlers.set(name, handler),
    },
    Menu: {
      setApplicationMenu: vi.fn(),
      buildFromTemplate: vi.fn((template: unknown) => template),
    },
  };
}
