import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openArchive, type OpenOptions } from '../../../electron/archive/open.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { Result } from '../../../core/base/result.ts';

/** A folder of its own for one test. */
export function freshFolder(): string {
  return mkdtempSync(path.join(tmpdir(), 'borefolio-test-'));
}

/** A world in which each look at the clock is one minute later. */
export function countingWorld(): OpenOptions {
  let minutes = 0;
  return {
    now: () => new Date(Date.UTC(2025, 2, 1, 8, minutes++)).toISOString(),
  };
}

/** The value of a result that must have come out well. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

export function openFresh(file = path.join(freshFolder(), 'Kalo.borefolio')): Archive {
  return valueOf(openArchive(file, countingWorld()));
}

export const record = {
  schemaVersion: 1,
  identity: {
    number: 'KA-012',
    name: 'Lémo school',
    supervisor: 'Adéwa Tonou',
    state: 'completed',
  },
  site: { district: 'Kalo', village: 'Lémo', spot: 'behind the market' },
  bore: { depthReached: 31.5 },
  log: [{ from: 0, to: 3, material: 'sand', remarks: 'termite mound nearby' }],
  fromNewer: { kept: [1, { as: 'given' }] },
};
