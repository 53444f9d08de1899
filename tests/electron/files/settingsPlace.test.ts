import { describe, expect, it } from 'vitest';
import { settingsPlace } from '../../../electron/files/settingsPlace.ts';

const home = '/home/someone';

describe('the file of a person’s choices', () => {
  it('stands below XDG_CONFIG_HOME where that is an absolute path (XDG Base Directory)', () => {
    const place = settingsPlace({ platform: 'linux', env: { XDG_CONFIG_HOME: '/etc/own' }, home });
    expect(place).toBe('/etc/own/borefolio/settings.json');
  });

  it('stands below .config where XDG_CONFIG_HOME is not set, or not absolute', () => {
    for (const env of [{}, { XDG_CONFIG_HOME: 'own' }, { XDG_CONFIG_HOME: '' }])
      expect(settingsPlace({ platform: 'linux', env, home })).toBe(
        `${home}/.config/borefolio/settings.json`,
      );
  });

  it('stands in the roaming folder on Windows and in the library on a Mac (common practice)', () => {
    const windows = settingsPlace({ platform: 'win32', env: { APPDATA: '/roam' }, home });
    expect(windows).toBe('/roam/borefolio/settings.json');
    const bare = settingsPlace({ platform: 'win32', env: {}, home });
    expect(bare).toBe(`${home}/AppData/Roaming/borefolio/settings.json`);
    const mac = settingsPlace({ platform: 'darwin', env: {}, home });
    expect(mac).toBe(`${home}/Library/Application Support/borefolio/settings.json`);
  });
});
