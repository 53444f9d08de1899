import { hash } from 'node:crypto';
import { ok, type Result } from '../../core/base/result.ts';
import type { UnsoundPaper } from '../../core/contract/calls.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Archive } from '../archive/archive.ts';
import type { IssueLine } from '../archive/issues.ts';
import { readPaperMark } from '../seal/readPaperMark.ts';
import { readSeals } from '../seal/readSeals.ts';
import { recordHash } from '../seal/recordHash.ts';
import { storedWell } from './stored.ts';

type Papers = Pick<Archive, 'issues' | 'openRevision'>;

/** What going through the issued papers found. */
export interface PaperCheck {
  readonly papers: number;
  readonly unsound: readonly UnsoundPaper[];
}

const fromBackup = 'Take it from a backup.';

/** A record as the paper shows it, which may name its well otherwise than this archive. */
function asShown(record: WellRecord, { shownId }: IssueLine): WellRecord {
  if (shownId === undefined) return record;
  return { ...record, identity: { ...record.identity, id: shownId } };
}

/** What is wrong with the bytes of a paper, the worst first. */
function faultOfFile(line: IssueLine, parts: readonly Uint8Array[]): string | undefined {
  const [paper = new Uint8Array()] = parts;
  if (line.pdfHash !== undefined && hash('sha256', paper) !== line.pdfHash)
    return `Its file is not what was issued: it was changed outside the program. ${fromBackup}`;
  const pdf = new Uint8Array(Buffer.concat(parts));
  const { state, seals, sentence } = readSeals(pdf);
  const signed = parts.length - 1;
  if (seals.length < signed)
    return `It was sealed ${signed} times, and bears ${seals.length} seals. ${fromBackup}`;
  if (state === 'changed' || state === 'addedTo') return sentence;
  if (readPaperMark(pdf).recordHash !== line.recordHash)
    return `Its file does not name the record that the archive issued it of. ${fromBackup}`;
  return undefined;
}

/** What is wrong with the revision that a paper was issued of. */
function faultOfRevision(archive: Papers, line: IssueLine): Result<string | undefined> {
  const stored = archive.openRevision(line.wellId, line.revision);
  if (!stored.ok)
    return stored.error.code === 'noSuchRevision'
      ? ok(`Revision ${line.revision}, which it shows, is missing. ${fromBackup}`)
      : stored;
  const well = storedWell(stored.value);
  if (!well.ok) return well;
  if (recordHash(asShown(well.value.record, line)) === line.recordHash) return ok(undefined);
  return ok(
    `Revision ${line.revision} is not the record that it shows: the paper has another hash of its record. Compare both with a backup.`,
  );
}

function faultOf(archive: Papers, line: IssueLine): Result<string | undefined> {
  const parts = archive.issues.parts(line.wellId, line.number);
  if (!parts.ok) return parts;
  const ofFile = faultOfFile(line, parts.value);
  return ofFile === undefined ? faultOfRevision(archive, line) : ok(ofFile);
}

/**
 * Goes through every issued paper: whether its bytes are those that were issued, whether its seals
 * hold, and whether the record that it names is that of its revision in the archive.
 */
export function checkPapers(archive: Papers): Result<PaperCheck> {
  const lines = archive.issues.all();
  if (!lines.ok) return lines;
  const unsound: UnsoundPaper[] = [];
  for (const line of lines.value) {
    const fault = faultOf(archive, line);
    if (!fault.ok) return fault;
    const { wellId: id, number: paper, revision, fileName } = line;
    if (fault.value !== undefined)
      unsound.push({ id, paper, revision, fileName, sentence: fault.value });
  }
  return ok({ papers: lines.value.length, unsound });
}
