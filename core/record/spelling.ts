import { writePath, type PathStep } from '../base/recordPath.ts';
import { childOf, keysOf } from './fieldAt.ts';
import { phrase } from './phrases/phrase.ts';
import { wellRecord } from './schema.ts';
import { troubleAt, type Trouble } from './trouble.ts';

type Rows = readonly [number[], number[], number[]];

/** The next row of the table of edits; `before` and `last` are the two rows above it. */
function nextRow([, before, last]: Rows, a: string, b: string, at: number): number[] {
  const row = [at];
  for (let j = 1; j <= b.length; j++) {
    const cost = a[at - 1] === b[j - 1] ? 0 : 1;
    const swapped = j > 1 && a[at - 1] === b[j - 2] && a[at - 2] === b[j - 1];
    const edits = [row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + cost];
    if (swapped) edits.push((before[j - 2] ?? Infinity) + 1);
    row.push(Math.min(...edits));
  }
  return row;
}

/**
 * Letters to add, drop, change or swap with their neighbour to make one word of another
 * (optimal string alignment distance).
 */
export function editsBetween(a: string, b: string): number {
  let rows: Rows = [[], [], Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) rows = [rows[1], rows[2], nextRow(rows, a, b, i)];
  return rows[2][b.length]!;
}

/** Case and joining marks do not tell words apart: `Gravel Pack` is `gravelPack`. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[\s_-]/g, '');
}

/** A slip is likelier in a long word than in a short one. */
function slipsAllowed(word: string): number {
  if (word.length < 4) return 0;
  return word.length < 8 ? 1 : 2;
}

/** The known word that a written one is most likely meant to be, if any is near. */
export function nearest(written: string, known: readonly string[]): string | undefined {
  const word = plain(written.slice(0, 60));
  return known
    .map((one) => ({ one, edits: editsBetween(word, plain(one)) }))
    .filter(({ one, edits }) => edits <= slipsAllowed(one))
    .sort((x, y) => x.edits - y.edits)[0]?.one;
}

type Field = Parameters<typeof childOf>[0];

function slipsAmong(row: object, field: Field, at: readonly PathStep[]): Trouble[] {
  const known = keysOf(field);
  const absent = known.filter((key) => !Object.hasOwn(row, key));
  return Object.keys(row)
    .filter((key) => known.length > 0 && !known.includes(key))
    .flatMap((key) => {
      const meant = nearest(key, absent);
      if (meant === undefined) return [];
      return [troubleAt(writePath([...at, key]), phrase('misspelledKey', { meant }))];
    });
}

/**
 * Unknown keys that look like a known one that is absent beside them. Unknown keys as such are
 * no trouble: a newer or another program may have written them.
 */
export function misspelledKeys(
  value: unknown,
  field: Field = wellRecord,
  at: readonly PathStep[] = [],
): Trouble[] {
  if (typeof value !== 'object' || value === null) return [];
  const inside = Object.entries(value).flatMap(([key, part]) => {
    const step = Array.isArray(value) ? Number(key) : key;
    const child = childOf(field, step);
    return child ? misspelledKeys(part, child, [...at, step]) : [];
  });
  return Array.isArray(value) ? inside : [...slipsAmong(value, field, at), ...inside];
}
