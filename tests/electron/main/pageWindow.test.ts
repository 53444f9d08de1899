import { describe, expect, it, vi } from 'vitest';
import { openPageWindow, windowOptions } from '../../../electron/main/pageWindow.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

describe('a window, asked of a stand-in for Electron', () => {
  it('gives its page no Node, a world of its own and the sandbox', () => {
    expect(windowOptions('/p.cjs').webPreferences).toMatchObject({
      preload: '/p.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
    });
  });

  it('loads our page and is shown when there is something to see', () => {
    const window = openPageWindow('/p.cjs');
    expect(window.loadURL).toHaveBeenCalledWith('borefolio://page/');
    expect(window.show).not.toHaveBeenCalled();
    window.emit('ready-to-show');
    expect(window.show).toHaveBeenCalledOnce();
  });
});
