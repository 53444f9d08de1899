import type { EntryField } from '../fields/entryField.ts';
import { writeNumber } from '../fields/number.ts';
import type { Starts } from '../../state/field.ts';

type Row = Readonly<Record<string, unknown>>;
type Maker = (rows: readonly unknown[]) => Starts;

function textOf(row: unknown, name: string): string {
  const value = (row as Row | undefined)?.[name];
  return typeof value === 'number' ? writeNumber(value) : '';
}

/** The next row begins where the last one ended; the first one at the ground. */
export const fromWhereItEnded: Maker = (rows) => ({
  from: rows.length === 0 ? '0' : textOf(rows.at(-1), 'to'),
});

/** How far a sample reaches where none was taken before it, metres. */
const firstSample = 1;

/** The next sample follows the last and reaches as far as that did; the first one a metre. */
export const sampleAfterSample: Maker = (rows) => {
  const last = rows.at(-1) as { from?: number; to?: number } | undefined;
  const { from = 0, to = 0 } = last ?? {};
  const length = to > from ? to - from : firstSample;
  return { from: writeNumber(to), to: writeNumber(Number((to + length).toFixed(3))) };
};

/** The next row has in these fields what the last one has. */
export function likeTheLast(fields: readonly EntryField[], names: readonly string[]): Maker {
  return (rows) => {
    const last = (rows.at(-1) ?? {}) as Row;
    const repeated = fields.filter(({ name }) => names.includes(name) && name in last);
    return Object.fromEntries(repeated.map(({ name, write }) => [name, write(last[name])]));
  };
}

/** Several kinds of start in one row. */
export function together(...makers: readonly Maker[]): Maker {
  return (rows) => Object.assign({}, ...makers.map((make) => make(rows))) as Starts;
}
