import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { settings, type Settings } from '../../core/contract/settingsShape.ts';
import { replaceFile } from '../files/replaceFile.ts';

/** Where a person's choices are kept. */
export interface SettingsStore {
  read(): Settings;
  write(chosen: Settings): Promise<void>;
}

function parsed(file: string): Settings {
  try {
    const read = settings.safeParse(JSON.parse(readFileSync(file, 'utf8')));
    return read.success ? read.data : {};
  } catch {
    // No file yet, or a spoilt one: choices are cheap to make again.
    return {};
  }
}

/**
 * Choices in a JSON file, read once. A disk that takes no note of them keeps nobody from work:
 * they hold until the program ends.
 */
export function settingsIn(file: string): SettingsStore {
  let held = parsed(file);
  return {
    read: () => held,
    async write(chosen) {
      held = chosen;
      try {
        mkdirSync(path.dirname(file), { recursive: true });
        await replaceFile(file, `${JSON.stringify(chosen, undefined, 2)}\n`);
      } catch {
        return;
      }
    },
  };
}

/** Choices that are kept in memory alone. */
export function passingSettings(): SettingsStore {
  let held: Settings = {};
  return {
    read: () => held,
    write: (chosen) => {
      held = chosen;
      return Promise.resolve();
    },
  };
}
