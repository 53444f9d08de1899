import { valueAt, type RecordPath } from '../../core/base/recordPath.ts';
import type { Desk } from '../../core/record/desk.ts';
import { setAt } from './edit.ts';
import type { Field } from './field.ts';
import { liesIn } from './selection.ts';

export type { Desk };

export function join(base: RecordPath, name: string): RecordPath {
  return base === '' ? name : `${base}.${name}`;
}

export function withTyped(desk: Desk, key: RecordPath, text: string | undefined): Desk {
  if (desk.typed[key] === text) return desk;
  const typed = { ...desk.typed };
  if (text === undefined) delete typed[key];
  else typed[key] = text;
  return { ...desk, typed };
}

/** What is typed within a part of the record and is not in it yet: as one text, to be compared. */
export function typedWithin({ typed }: Desk, base: RecordPath): string {
  const here = Object.entries(typed).filter(([key]) => liesIn(key, base));
  return here.length === 0 ? '' : JSON.stringify(here);
}

/** What a field shows: what was typed last, else what the record holds. */
export function shown(desk: Desk, base: RecordPath, field: Field): string {
  return desk.typed[join(base, field.name)] ?? written(desk, base, field);
}

function written(desk: Desk, base: RecordPath, field: Field): string {
  const value = valueAt(desk.record, join(base, field.at ?? field.name));
  return value === undefined ? '' : field.write(value);
}

/**
 * Takes a text for a field. What can be read goes into the record; what cannot is kept as typed,
 * and the record stays as it was.
 */
export function enter(desk: Desk, base: RecordPath, field: Field, text: string): Desk {
  const key = join(base, field.name);
  const reading = field.read(text);
  if (!reading.ok || (field.required && reading.value === undefined))
    return withTyped(desk, key, text);
  const clean = withTyped(desk, key, undefined);
  if (reading.value === undefined && written(desk, base, field) === '') return clean;
  const record = setAt(desk.record, join(base, field.at ?? field.name), reading.value);
  return { ...clean, record };
}
