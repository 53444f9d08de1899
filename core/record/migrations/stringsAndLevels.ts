import type { Migration, RecordDocument } from './migration.ts';

/**
 * Version 1. The draft shape had one flat list of pipes `casing` counted from the bottom and set
 * by `casingBottom`; intervals with `top` and `base`; and one rest level `swl`, metres below
 * ground, read on `swlDate`. Version 1 has strings, intervals with `from` and `to`, and levels.
 */
export const stringsAndLevels: Migration = {
  version: 1,
  name: 'stringsAndLevels',
  change: (written) => withLevels(withIntervals(withStrings(written))),
};

const pipeNames = { type: 'kind', od: 'outside', thickness: 'wall' };
const intervalNames = { top: 'from', base: 'to' };

function isRow(value: unknown): value is RecordDocument {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Renames keys; where the new name is taken already, both stay as they are. */
function renamed(row: unknown, names: Readonly<Record<string, string>>): unknown {
  if (!isRow(row)) return row;
  const entries = Object.entries(row).map(([key, value]) => {
    const name = Object.hasOwn(names, key) ? names[key]! : key;
    return [Object.hasOwn(row, name) ? key : name, value] as const;
  });
  return Object.fromEntries(entries);
}

function listOf(written: RecordDocument, key: string): readonly unknown[] {
  const value = written[key] ?? [];
  if (Array.isArray(value)) return value;
  throw new Error(`${key} is not a list`);
}

/** A record that has strings already keeps them, and its draft fields as they stand. */
function withStrings(written: RecordDocument): RecordDocument {
  const { casing, casingBottom, ...rest } = written;
  if ((casing === undefined && casingBottom === undefined) || 'strings' in written) return written;
  const components = listOf(written, 'casing').map((pipe) => renamed(pipe, pipeNames));
  const set = casingBottom === undefined ? {} : { set: { by: 'bottom', depth: casingBottom } };
  return { ...rest, strings: [{ components, ...set }] };
}

function withIntervals(written: RecordDocument): RecordDocument {
  if (written['log'] === undefined) return written;
  const log = listOf(written, 'log').map((row) => renamed(row, intervalNames));
  return { ...written, log };
}

/** A day without a rest level tells nothing and stays where it was. */
function withLevels(written: RecordDocument): RecordDocument {
  const { swl, swlDate, ...rest } = written;
  if (swl === undefined) return written;
  const at = swlDate === undefined ? {} : { at: swlDate };
  const level = { ...at, reading: swl, datum: 'ground', state: 'static' };
  return { ...rest, levels: [...listOf(written, 'levels'), level] };
}
