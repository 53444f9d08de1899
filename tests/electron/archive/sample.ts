import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openArchive, type OpenOptions } from '../../../electron/archive/open.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { StoredDocument } from '../../../electron/archive/read.ts';
import type { Result } from '../../../core/base/result.ts';
import { moveTo } from '../../moves.ts';

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

/** Types over a whole record, upon the newest edit. */
export function retype(archive: Archive, id: string, record: object) {
  const working = archive.working(id);
  if (!working.ok) return working;
  const { desk, edit } = working.value;
  return archive.edit(id, { upon: edit, moves: [moveTo(desk, { ...desk, record })] });
}

/** Types over a whole record and makes a revision of it. */
export function revise(archive: Archive, id: string, record: object): Result<StoredDocument> {
  const typed = retype(archive, id, record);
  return typed.ok ? archive.save(id, typed.value.edit) : typed;
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
