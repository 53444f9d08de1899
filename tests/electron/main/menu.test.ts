import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it, vi } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { menuTemplate } from '../../../electron/main/menu.ts';
import { desktopWords } from '../../../electron/main/words.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

const actions = {
  newArchive: vi.fn(),
  openArchive: vi.fn(),
  newWindow: vi.fn(),
  undo: vi.fn(),
  redo: vi.fn(),
};
const menu = (platform: NodeJS.Platform, language: keyof typeof desktopWords = 'en') =>
  menuTemplate(actions, desktopWords[language], platform);

function entries(template: readonly MenuItemConstructorOptions[]): MenuItemConstructorOptions[] {
  return template.flatMap((one) => [
    one,
    ...entries((one.submenu ?? []) as MenuItemConstructorOptions[]),
  ]);
}

describe('the menu, as handed to a stand-in for Electron', () => {
  it('has editing and the program’s own entries on every system', () => {
    for (const platform of ['linux', 'win32', 'darwin'] as const) {
      const labels = entries(menu(platform)).map(({ label }) => label);
      expect(labels).toEqual(expect.arrayContaining(['Edit', 'Paste', 'Open archive…']));
    }
  });

  it('quits from the File menu, except on macOS, where the program’s own menu does', () => {
    expect(JSON.stringify(menu('linux'))).toContain('"role":"quit"');
    expect(JSON.stringify(menu('darwin'))).not.toContain('"role":"quit"');
    expect(menu('darwin')[0]).toEqual({ role: 'appMenu' });
  });

  it('undoes what was done in the well, and leaves the keys for it to the page', () => {
    const undo = entries(menu('linux')).find(({ label }) => label === 'Undo');
    expect(undo).toMatchObject({ accelerator: 'CmdOrCtrl+Z', registerAccelerator: false });
    expect(undo).not.toHaveProperty('role');
    (undo!.click as () => void)();
    expect(actions.undo).toHaveBeenCalledOnce();
  });

  it('says every entry in each language, none of them as in another', () => {
    const said = languages.map((language) =>
      entries(menu('linux', language))
        .filter(({ type }) => type !== 'separator')
        .map(({ label }) => label),
    );
    for (const labels of said) expect(labels).not.toContain(undefined);
    const [english, french, portuguese] = said.map((labels) => new Set(labels));
    expect([...english!].filter((label) => french!.has(label) || portuguese!.has(label))).toEqual(
      [],
    );
  });
});
