import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { BrowserWindow, dialog } from 'electron';
import { describe, expect, it, vi } from 'vitest';
import { eventChannel } from '../../../core/contract/host.ts';
import { newDesk } from '../../../electron/main/desk.ts';
import { desktopWords } from '../../../electron/main/words.ts';
import { passingIdentities } from '../../../electron/service/identityStore.ts';
import { passingSettings } from '../../../electron/service/settingsFile.ts';
import { freshFolder } from '../archive/sample.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

const world = () => ({
  settings: passingSettings(),
  identities: passingIdentities(),
  words: () => desktopWords.en,
  onSettings: vi.fn(),
});

describe('the open archive, with a stand-in for Electron’s windows and dialogs', () => {
  it('tells every window of a change', async () => {
    const desk = newDesk(world());
    const window = new BrowserWindow();
    expect(await desk.open(path.join(freshFolder(), 'Kalo.borefolio'))).toBe(true);
    await desk.service()!.call('wells.create', { record: { schemaVersion: 1 } });
    expect(window.webContents.send).toHaveBeenCalledExactlyOnceWith(
      eventChannel,
      expect.objectContaining({ name: 'well.changed' }),
    );
    await desk.close();
    expect(desk.service()).toBeUndefined();
  });

  it('stays open when another cannot be opened, and the reason is shown', async () => {
    const desk = newDesk(world());
    const folder = freshFolder();
    await desk.open(path.join(folder, 'Kalo.borefolio'));
    const before = desk.service();
    writeFileSync(path.join(folder, 'bad.borefolio'), 'bad '.repeat(500));
    expect(await desk.open(path.join(folder, 'bad.borefolio'))).toBe(false);
    expect(desk.service()).toBe(before);
    expect(dialog.showErrorBox).toHaveBeenCalledExactlyOnceWith(
      'The archive was not opened',
      expect.stringContaining('bad.borefolio is damaged'),
    );
    await desk.close();
  });

  it('hears of other settings, and says so to every window and to the menu', async () => {
    const own = world();
    const desk = newDesk(own);
    const window = new BrowserWindow();
    await desk.open(path.join(freshFolder(), 'Kalo.borefolio'));
    await desk.service()!.call('settings.write', { language: 'fr' });
    expect(own.onSettings).toHaveBeenCalledOnce();
    expect(own.settings.read()).toEqual({ language: 'fr' });
    expect(window.webContents.send).toHaveBeenCalledWith(eventChannel, {
      name: 'settings.changed',
      data: { language: 'fr' },
    });
    await desk.close();
  });
});
