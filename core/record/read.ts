import {
  readPath,
  valueAt,
  writePath,
  type PathStep,
  type RecordPath,
} from '../base/recordPath.ts';
import type { Result } from '../base/result.ts';
import { deepFreeze } from './freeze.ts';
import { migrate } from './migrations.ts';
import type { RecordDocument } from './migrations/migration.ts';
import { phrase, type Phrase } from './phrases/phrase.ts';
import { kindOfPlace, leaveOut, placeInDocument, type Places, type Pruned } from './prune.ts';
import { currentVersion, wellRecord, type WellRecord } from './schema.ts';
import { sayIssue, shown } from './sentences.ts';
import { misspelledKeys } from './spelling.ts';
import { troubleAt, type Trouble } from './trouble.ts';

/** What came of reading a document. Everything in it is frozen. */
export type Reading = ReadRecord | TooNew | FailedReading;

export interface ReadRecord {
  readonly kind: 'ok';
  /** What could be read. Parts that could not are left out; each has its trouble. */
  readonly record: WellRecord;
  /** Paths in troubles are paths of `document`. */
  readonly troubles: readonly Trouble[];
  /** The whole document in the latest version, with what could not be read: this is to be kept. */
  readonly document: RecordDocument;
  /** Leads from the record's paths to the document's; see `placeInDocument`. */
  readonly places: Places;
}

/** Made by a newer version of the program. */
export interface TooNew {
  readonly kind: 'tooNew';
  readonly version: number;
  readonly sentence: string;
}

/** Not a record at all, or one that could not be brought to the latest version. */
export interface FailedReading {
  readonly kind: 'failed';
  readonly troubles: readonly Trouble[];
}

/** Annulus fills point at strings by their place, so that a string may not close up. */
const standIns = { 'strings[]': { components: [] }, 'strings[].components': [] };

/** A copy of plain JSON, so that freezing never reaches the caller's own document. */
function copied(written: unknown): Result<unknown, Phrase> {
  try {
    return { ok: true, value: JSON.parse(JSON.stringify(written)) };
  } catch {
    return { ok: false, error: phrase('notJson') };
  }
}

function isDocument(value: unknown): value is RecordDocument {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function failed(path: RecordPath, says: Phrase): FailedReading {
  return { kind: 'failed', troubles: [troubleAt(path, says)] };
}

/** A document from before versions were written counts as version 0. */
function versionOf(written: RecordDocument): number | undefined {
  const version = written['schemaVersion'] ?? 0;
  return Number.isInteger(version) && (version as number) >= 0 ? (version as number) : undefined;
}

function tooNew(version: number): TooNew {
  const sentence =
    `schemaVersion: this record has version ${version}, newer than this program knows ` +
    `(${currentVersion}); open it with a newer Borefolio`;
  return { kind: 'tooNew', version, sentence };
}

/** What is to go for an issue: the part itself, or what it is missing from. */
function partToLeaveOut({ value, places }: Pruned, steps: readonly PropertyKey[]): RecordPath {
  const path = writePath(steps as PathStep[]);
  const missing = valueAt(value, path) === undefined && !(kindOfPlace(path) in standIns);
  return placeInDocument(places, missing ? writePath(readPath(path).slice(0, -1)) : path);
}

/** Leaves out what the schema cannot take, and then what cannot stand without it. */
function readable(written: RecordDocument): Pruned {
  const out = new Set<RecordPath>();
  for (;;) {
    const pruned = leaveOut(written, out, standIns);
    const issues = wellRecord.safeParse(pruned.value).error?.issues ?? [];
    if (issues.length === 0) return pruned;
    const before = out.size;
    for (const { path } of issues) out.add(partToLeaveOut(pruned, path));
    if (out.size === before) throw new Error(`Nothing left to leave out: ${issues[0]!.message}`);
  }
}

function readCurrent(written: RecordDocument): ReadRecord {
  const issues = wellRecord.safeParse(written).error?.issues ?? [];
  const { value, places } = readable(written);
  const troubles = [...issues.map((issue) => sayIssue(written, issue)), ...misspelledKeys(written)];
  return { kind: 'ok', record: value as WellRecord, troubles, document: written, places };
}

function readDocument(written: RecordDocument): Reading {
  const version = versionOf(written);
  if (version === undefined)
    return failed(
      'schemaVersion',
      phrase('noVersion', { found: shown(written['schemaVersion']), current: currentVersion }),
    );
  if (version > currentVersion) return tooNew(version);
  const migrated = migrate(written, version);
  if (migrated.ok) return readCurrent(migrated.value);
  const { version: failedAt, name, reason } = migrated.error;
  return failed('', phrase('stopped', { reason, version: failedAt, name }));
}

/**
 * Reads a well's record from parsed JSON of any version. Bad input never throws: what cannot be
 * read is left out of the record and named in a trouble. The document given is not touched.
 */
export function readRecord(written: unknown): Reading {
  const copy = copied(written);
  if (!copy.ok) return deepFreeze(failed('', copy.error));
  if (isDocument(copy.value)) return deepFreeze(readDocument(copy.value));
  return deepFreeze(failed('', phrase('notARecord', { found: shown(copy.value) })));
}
