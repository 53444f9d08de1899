import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** What a build depends on, from the top of the project. */
const sources = ['assets', 'core', 'electron', 'renderer', 'package-lock.json', 'vite.config.ts'];

/** @param {string} entry @returns {string[]} files, in a stated order */
function filesUnder(entry) {
  try {
    return readdirSync(entry, { withFileTypes: true })
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .flatMap((one) => {
        const child = path.join(entry, one.name);
        return one.isDirectory() ? filesUnder(child) : [child];
      });
  } catch {
    return [entry];
  }
}

/** @param {string} file */
function textOf(file) {
  try {
    return readFileSync(file);
  } catch {
    return '';
  }
}

/**
 * A hash that changes when a source file changes.
 * @param {string} top the project's top folder
 */
export function sourceStamp(top) {
  const hash = createHash('sha256');
  for (const file of sources.flatMap((entry) => filesUnder(path.join(top, entry))))
    hash
      .update(`${path.relative(top, file)}\0`)
      .update(textOf(file))
      .update('\0');
  return hash.digest('hex');
}
