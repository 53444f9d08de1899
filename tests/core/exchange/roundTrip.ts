import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { writePath, type PathStep, type RecordPath } from '../../../core/base/recordPath.ts';
import type { Result } from '../../../core/base/result.ts';
import type { Incoming } from '../../../core/exchange/incoming.ts';
import type { Loss, MadeFile, OutgoingWell } from '../../../core/exchange/outgoing.ts';
import { writeWells, type WellWriter } from '../../../core/exchange/writer.ts';
import { readRecord } from '../../../core/record/read.ts';
import type { WellRecord } from '../../../core/record/schema.ts';

const isGroup = (value: unknown): value is object => typeof value === 'object' && value !== null;
const isMoment = (value: unknown): value is string =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(value);

/** Absent is not known, and so is a chapter that holds nothing. */
const saysNothing = (value: unknown): boolean =>
  value === undefined || (isGroup(value) && Object.values(value).every(saysNothing));

/** The same moment may be written with or without its seconds. */
function isSame(one: unknown, other: unknown): boolean {
  if (isMoment(one) && isMoment(other)) return Date.parse(one) === Date.parse(other);
  return one === other || (saysNothing(one) && saysNothing(other));
}

/** Where two records differ, leaf by leaf. */
export function differences(one: unknown, other: unknown, at: PathStep[] = []): RecordPath[] {
  if (!isGroup(one) && !isGroup(other)) return isSame(one, other) ? [] : [writePath(at)];
  if (saysNothing(one) && saysNothing(other)) return [];
  const [left, right] = [isGroup(one) ? one : {}, isGroup(other) ? other : {}];
  const isList = Array.isArray(one) || Array.isArray(other);
  return [...new Set([...Object.keys(left), ...Object.keys(right)])].flatMap((key) => {
    const step = isList ? Number(key) : key;
    return differences(
      (left as Record<string, unknown>)[key],
      (right as Record<string, unknown>)[key],
      [...at, step],
    );
  });
}

const lies = (path: RecordPath, under: RecordPath) =>
  under === '' || path === under || path.startsWith(`${under}.`) || path.startsWith(`${under}[`);

/** Differences that no loss tells. */
export function untold(before: unknown, after: unknown, losses: readonly Loss[]): RecordPath[] {
  return differences(before, after).filter((path) => !losses.some((loss) => lies(path, loss.path)));
}

/** Losses that name what came back as it was. */
export function falselyTold(
  before: unknown,
  after: unknown,
  losses: readonly Loss[],
): readonly Loss[] {
  const changed = differences(before, after);
  return losses.filter((loss) => !changed.some((path) => lies(path, loss.path)));
}

const demoFolder = path.join(import.meta.dirname, '../../../demo-data');

/** The demo wells by the names of their files. */
export function demoWells(): ReadonlyMap<string, WellRecord> {
  const files = readdirSync(demoFolder).filter((name) => name.endsWith('.json'));
  return new Map(
    files.map((name) => {
      const reading = readRecord(JSON.parse(readFileSync(path.join(demoFolder, name), 'utf8')));
      if (reading.kind !== 'ok') throw new Error(`${name} is no record`);
      return [name, reading.record];
    }),
  );
}

/** Reads what a writer made. */
export type ReadBack = (files: readonly MadeFile[]) => Result<Incoming> | Promise<Result<Incoming>>;

/** Writes a record and reads it back; no well where the format could not hold it at all. */
export async function thereAndBack(
  record: WellRecord,
  writer: WellWriter,
  read: ReadBack,
): Promise<{ readonly record: WellRecord | undefined; readonly losses: readonly Loss[] }> {
  const { files, losses } = await writeWells(writer, [outgoing(record)]);
  const result = await read(files);
  if (!result.ok) throw new Error(result.error.sentence);
  return { record: result.value.wells[0]?.record, losses };
}

/** A record as the archive hands it out. */
export function outgoing(record: WellRecord): OutgoingWell {
  return { record, revision: 1, changedAt: '2026-03-04T08:30:00+01:00' };
}

export const writing = { madeAt: '2026-03-05T12:00:00Z', name: 'wells' };
