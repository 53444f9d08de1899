import { describe, expect, it, vi } from 'vitest';
import { menuTemplate } from '../../../electron/main/menu.ts';

vi.mock('electron', async () => (await import('./standIn.ts')).electronStandIn());

const actions = { newArchive: vi.fn(), openArchive: vi.fn(), newWindow: vi.fn() };

describe('the menu, as handed to a stand-in for Electron', () => {
  it('has editing and the program’s own entries on every system', () => {
    for (const platform of ['linux', 'win32', 'darwin'] as const) {
      const text = JSON.stringify(menuTemplate(actions, platform));
      expect(text).toContain('"role":"editMenu"');
      expect(text).toContain('Open archive…');
    }
  });

  it('quits from the File menu, except on macOS, where the program’s own menu does', () => {
    expect(JSON.stringify(menuTemplate(actions, 'linux'))).toContain('"role":"quit"');
    expect(JSON.stringify(menuTemplate(actions, 'darwin'))).not.toContain('"role":"quit"');
    expect(menuTemplate(actions, 'darwin')[0]).toEqual({ role: 'appMenu' });
  });
});
