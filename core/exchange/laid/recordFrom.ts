import { readRecord } from '../../record/read.ts';
import { currentVersion } from '../../record/schema.ts';
import { troublePhrase } from '../../record/trouble.ts';
import type { IncomingWell } from '../incoming.ts';
import { reason } from '../reasons/reason.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';

/** Where in a file a well stands. */
export interface Place {
  readonly file: string;
  /** From 1. */
  readonly line: number;
}

export interface WellFrom {
  readonly well: IncomingWell;
  readonly troubles: readonly TableTrouble[];
}

const isEmpty = (value: unknown) =>
  value === undefined ||
  (typeof value === 'object' && value !== null && Object.keys(value).length === 0);

/** Chapters that hold nothing are absent from a record. */
export function withoutEmpty(chapters: object): object {
  return Object.fromEntries(Object.entries(chapters).filter(([, value]) => !isEmpty(value)));
}

/**
 * A well from the chapters that were found of it. What the record's own rules do not take is left
 * out of it and told by its path.
 */
export function wellFrom(chapters: object, { file, line }: Place): WellFrom {
  const reading = readRecord({ schemaVersion: currentVersion, ...withoutEmpty(chapters) });
  if (reading.kind !== 'ok') throw new Error(`${file}:${line}: no record was made`);
  const troubles = reading.troubles.map((one) => ({
    ...{ file, line, column: one.path, kept: true },
    ...told(reason('restOfWellComes', { says: { phrase: troublePhrase(one) } })),
  }));
  return { well: { record: reading.record, file, line }, troubles };
}
