import type { RecordPath } from '../../base/recordPath.ts';
import { headingWords, wellWords } from '../proposal/headingWords.ts';
import { plainHeading } from '../proposal/plainHeading.ts';
import { fieldsOf } from '../tables/fields.ts';
import { convertLength } from '../tables/units.ts';

/** A property that other people name, led to a field of the record. */
export interface AlikeValue {
  readonly path: RecordPath;
  readonly value: unknown;
}

const number = 'identity.number';

const paths: ReadonlyMap<string, RecordPath> = new Map([
  ...wellWords.map((word) => [word, number] as const),
  ...Object.entries(headingWords.wells).flatMap(([path, words]) =>
    words.map((word) => [word, path] as const),
  ),
]);

const numberOf = (value: unknown) =>
  typeof value === 'string' && value.trim() !== '' ? Number(value) : value;

/**
 * A property whose name is a heading that tables of wells have, with its value as the field wants
 * it: lengths in the unit that the name says, metres where none. Positions are the geometry's.
 * Undefined where the name is none, or its words stand for a list that the value is not among.
 */
export function alikeValue(name: string, value: unknown): AlikeValue | undefined {
  const { words, unit = 'm' } = plainHeading(name);
  const path = paths.get(words);
  if (path === undefined || path === 'site.latitude' || path === 'site.longitude') return undefined;
  const field = fieldsOf.wells[path]!;
  const given = numberOf(value);
  if (field.type === 'text')
    return ['string', 'number'].includes(typeof value) ? { path, value: String(value) } : undefined;
  if (field.words) return field.words.includes(value as string) ? { path, value } : undefined;
  if (field.type === 'day') return typeof value === 'string' ? { path, value } : undefined;
  if (typeof given !== 'number' || !Number.isFinite(given)) return undefined;
  return { path, value: field.type === 'metres' ? convertLength(given, unit, 'm') : given };
}
