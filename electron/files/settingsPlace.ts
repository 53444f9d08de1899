import { homedir } from 'node:os';
import path from 'node:path';

/** What tells one computer's habits from another's. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

function configFolder({ platform, env, home }: Surroundings): string {
  if (platform === 'win32') return env['APPDATA'] ?? path.join(home, 'AppData', 'Roaming');
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support');
  // XDG Base Directory Specification: a relative path is to be taken as not set.
  const named = env['XDG_CONFIG_HOME'] ?? '';
  return path.isAbsolute(named) ? named : path.join(home, '.config');
}

/** The file of a person's choices, where each system keeps such files. */
export function settingsPlace(
  at: Surroundings = { platform: process.platform, env: process.env, home: homedir() },
): string {
  return path.join(configFolder(at), 'borefolio', 'settings.json');
}
