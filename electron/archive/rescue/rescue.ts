import { existsSync, rmSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { ok, refused, type Result } from '../../../core/base/result.ts';
import type { WriteHandle } from '../handles.ts';
import { putLine } from '../line.ts';
import { openArchive } from '../open.ts';
import { findWell } from '../tables/wells.ts';
import { findWorking } from '../tables/working.ts';
import { guarded } from '../trouble.ts';
import type { ArchiveWorld } from '../world.ts';
import { chainFound, type RescuedWells } from './chains.ts';
import { putFound } from './intoArchive.ts';
import { openPages } from './pageFile.ts';
import { everyRow } from './rows.ts';

export interface Rescued extends RescuedWells {
  /** Photos and other files; those that are no longer what was kept are left out. */
  readonly files: number;
  readonly changedFiles: number;
  /** Issued papers. */
  readonly papers: number;
  /** Wells with something typed that is in no revision. */
  readonly typed: number;
  /** Rows that could be read, and of which nobody can tell what they are. */
  readonly unknown: number;
}

/** Rows whose other half is lost. */
const loose = `
  DELETE FROM working WHERE well_id NOT IN (SELECT id FROM well);
  DELETE FROM issue_seal WHERE (well_id, number) NOT IN (SELECT well_id, number FROM issue);
  DELETE FROM print_copy WHERE hash NOT IN (SELECT hash FROM attachment);
`;

/** Lists follow what was typed last, as they do in an archive that is worked on. */
function listTyped(db: WriteHandle): void {
  const typed = db
    .prepare<[], string>('SELECT well_id FROM working WHERE unrevised = 1')
    .pluck()
    .all();
  for (const id of typed) {
    const { desk, changedAt } = findWorking(db, id)!;
    const { revision } = findWell(db, id)!;
    putLine(db, desk.record, { id, revision, changedAt });
  }
}

function fill(target: string, damagedFile: string): Rescued {
  const pages = openPages(damagedFile);
  const db = new Database(target) as WriteHandle;
  try {
    db.pragma('foreign_keys = OFF');
    return db
      .transaction((): Rescued => {
        const tally = putFound(db, everyRow(pages));
        const wells = chainFound(db);
        db.exec(loose);
        listTyped(db);
        const left = (rows: string) =>
          db.prepare<[], number>(`SELECT count(*) FROM ${rows}`).pluck().get()!;
        return {
          ...wells,
          files: left('attachment'),
          changedFiles: tally.get('changed') ?? 0,
          papers: left('issue'),
          typed: left('working WHERE unrevised = 1'),
          unknown: tally.get('unknown') ?? 0,
        };
      })
      .immediate();
  } finally {
    db.close();
    pages.close();
  }
}

function unusable(damagedFile: string, target: string): Result<undefined> {
  if (!existsSync(damagedFile))
    return refused('noFile', `There is no archive ${damagedFile}. Check the name and the folder.`);
  if (existsSync(target))
    return refused(
      'fileExists',
      `${path.basename(target)} is there already. Name a file that is not there yet.`,
    );
  return ok(undefined);
}

/**
 * Reads what is left of a damaged archive into a new one, and leaves the damaged file as it is.
 * Pages are read one by one without SQLite, so that one that is spoiled takes nothing else along;
 * rows that were deleted may come back where a page of them was never used again. A revision
 * stays as it was where it still fits the chain of hashes. Refusals: `noFile`, `fileExists`,
 * `nothingFound`, and what the disk says.
 */
export function rescueArchive(
  damagedFile: string,
  target: string,
  world: ArchiveWorld,
): Result<Rescued> {
  const fault = unusable(damagedFile, target);
  if (!fault.ok) return fault;
  const made = openArchive(target, world);
  if (!made.ok) return made;
  made.value.close();
  const rescued = guarded(target, () => ok(fill(target, damagedFile)));
  if (rescued.ok && rescued.value.wells > 0) return rescued;
  for (const end of ['', '-wal', '-shm']) rmSync(target + end, { force: true });
  if (!rescued.ok) return rescued;
  return refused(
    'nothingFound',
    `No well could be found in ${path.basename(damagedFile)}. Look for a backup, or for another copy of the file.`,
  );
}
