import { setImmediate } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { isSame } from '../../core/base/patch.ts';
import { valueAt } from '../../core/base/recordPath.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { chainStart } from './chain.ts';
import type { WriteHandle } from './handles.ts';
import { openWell, type StoredDocument } from './read.ts';
import { readDocument } from './readDocument.ts';
import { isBinned } from './tables/bin.ts';
import { dropEdits } from './tables/edits.ts';
import { findRevision } from './tables/revisions.ts';
import { findWell, type ListedWell } from './tables/wells.ts';
import { findWorking, putWorking } from './tables/working.ts';
import { guardedLong } from './trouble.ts';
import { putNext, type Sayings } from './write.ts';

/** A well to be put in, or the next revision of one that the archive has by this id. */
export interface BroughtWell extends Sayings {
  readonly id: string;
  /** A record that was read and judged before. */
  readonly document: unknown;
  /** When this revision was made, ISO 8601; absent where that is now. */
  readonly changedAt?: string;
}

/** Wells one after the other, so that not all of them need to be in memory. */
export type Wells = Iterable<BroughtWell> | AsyncIterable<BroughtWell>;

export interface BringOptions extends Sayings {
  /** Told now and then how many are done. */
  readonly onProgress?: (done: number) => void;
  /** Stops the work, and leaves nothing of it behind. */
  readonly signal?: AbortSignal;
}

/** What became of the wells. */
export interface Brought {
  readonly created: number;
  readonly revised: number;
  /** Their records were the newest revision's already. */
  readonly unchanged: number;
}

/** Wells between two looks at whether to stop: some hundredths of a second. */
const eachTime = 50;

/** Kilobytes of the file in memory, so that the search index is not read again and again. */
const cache = 64_000;

type Became = keyof Brought;

const calledOf = ({ number, id }: ListedWell) => number || id;

function cannotRevise(db: WriteHandle, well: ListedWell): Result<undefined> {
  const working = findWorking(db, well.id);
  if (working?.unrevised || Object.keys(working?.desk.typed ?? {}).length > 0)
    return refused(
      'typedSince',
      `In the well ${calledOf(well)} something was typed that is in no revision. Open it and save it first. Nothing was changed.`,
    );
  if (isBinned(db, well.id))
    return refused(
      'wellInBin',
      `The well ${calledOf(well)} is in the bin. Put it back, or empty the bin, first. Nothing was changed.`,
    );
  return ok(undefined);
}

/**
 * Whoever has the well open works upon an older edit from here on, and so takes this in first.
 */
function layOnDesk(db: WriteHandle, { id, document, changedAt }: StoredDocument): Result<void> {
  const reading = readDocument(document);
  if (!reading.ok) return reading;
  const edit = (findWorking(db, id)?.edit ?? 0) + 1;
  const desk = { record: reading.value.record, typed: {} };
  dropEdits(db, id);
  putWorking(db, { wellId: id, desk, edit, unrevised: false, changedAt });
  return ok(undefined);
}

/** Makes the next revision of a well that nobody is in the midst of typing at. */
export function reviseWell(
  db: WriteHandle,
  well: ListedWell,
  next: Omit<StoredDocument, 'revision'>,
  said: Sayings,
): Result<Became> {
  const newest = openWell(db, well.id);
  if (!newest.ok) return newest;
  if (isSame(newest.value.document, next.document)) return ok('unchanged');
  const fault = cannotRevise(db, well);
  if (!fault.ok) return fault;
  const revised = { ...next, revision: well.revision + 1 };
  putNext(db, revised, findRevision(db, well.id, well.revision)!.hash, said);
  const laid = layOnDesk(db, revised);
  return laid.ok ? ok('revised') : laid;
}

function bringOne(db: WriteHandle, well: Required<BroughtWell>): Result<Became> {
  const { id, document, changedAt, author, reason } = well;
  const inRecord = valueAt(document, 'identity.id');
  if (inRecord !== undefined && inRecord !== id)
    throw new Error(`the record of ${String(inRecord)} was to be brought in as ${id}`);
  const known = findWell(db, id);
  const said = { author, reason };
  if (known) return reviseWell(db, known, { id, document, changedAt }, said);
  putNext(db, { id, document, changedAt, revision: 1 }, chainStart, said);
  return ok('created');
}

/** What is said where somebody stopped the work. */
export const stopped = () =>
  refused('stopped', 'It was stopped: nothing was brought in, and all is as it was before.');

/** What else is to be written meanwhile waits: it would have to wait for the whole file. */
export const beingBrought = () =>
  refused(
    'bringing',
    'Wells are being brought in. Nothing was saved; try again when that is done, or stop it.',
  );

async function bringAll(
  db: WriteHandle,
  wells: Wells,
  now: string,
  { onProgress, signal, author = '', reason = '' }: BringOptions,
): Promise<Result<Brought>> {
  const became = { created: 0, revised: 0, unchanged: 0 };
  let done = 0;
  for await (const well of wells) {
    const one = bringOne(db, { changedAt: now, author, reason, ...well });
    if (!one.ok) return one;
    became[one.value] += 1;
    done += 1;
    if (done % eachTime !== 0) continue;
    onProgress?.(done);
    await setImmediate();
    if (signal?.aborted) return stopped();
  }
  onProgress?.(done);
  return signal?.aborted ? stopped() : ok(became);
}

/**
 * Puts many wells in, and next revisions of those that are known by their ids, in one transaction:
 * all of them or nothing. The same id may come more than once, each time as the next revision. The
 * file is reached by a connection of its own, so that lists meanwhile show what was before; nothing
 * else can be written until it is done. Refusals: `stopped`, `typedSince`, `wellInBin`, `readOnly`,
 * and what else the disk says.
 */
export function bringWells(
  file: string,
  wells: Wells,
  now: string,
  options: BringOptions,
): Promise<Result<Brought>> {
  return guardedLong(file, async () => {
    const db = new Database(file) as WriteHandle;
    try {
      db.pragma('foreign_keys = ON');
      db.pragma('synchronous = FULL');
      db.pragma(`cache_size = -${cache}`);
      db.exec('BEGIN IMMEDIATE');
      const brought = await bringAll(db, wells, now, options);
      if (brought.ok) db.exec('COMMIT');
      return brought;
    } finally {
      // What was not committed goes with the connection.
      db.close();
    }
  });
}
