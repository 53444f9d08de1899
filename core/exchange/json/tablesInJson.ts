import type { GivenFile } from '../incoming.ts';
import { decode } from '../tables/decode.ts';
import type { Grid } from '../tables/rows.ts';

/** A list of a JSON file, each of its objects a row under the names of all. */
export interface JsonTable {
  /** The key of the list; empty where the list is the whole file. */
  readonly key: string;
  readonly grid: (decimal: '.' | ',') => Grid;
}

type Flat = Readonly<Record<string, string | number | boolean | null>>;

const isPlain = (value: unknown) => typeof value !== 'object' || value === null;

function isFlat(value: unknown): value is Flat {
  if (isPlain(value) || Array.isArray(value)) return false;
  return Object.values(value as object).every(isPlain);
}

const isTable = (value: unknown): value is readonly Flat[] =>
  Array.isArray(value) && value.length > 0 && value.every(isFlat);

function textOf(value: Flat[string] | undefined, decimal: '.' | ','): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'number' ? String(value).replace('.', decimal) : String(value);
}

/** A line is a row's number, as in a workbook: the headings stand on the first. */
function gridOf(list: readonly Flat[], decimal: '.' | ','): Grid {
  const names = [...new Set(list.flatMap((one) => Object.keys(one)))];
  const rows = list.map((one) => names.map((name) => textOf(one[name], decimal)));
  return { rows: [names, ...rows].map((cells, at) => ({ line: at + 1, cells })) };
}

function listsIn(json: unknown): readonly (readonly [string, unknown])[] {
  if (Array.isArray(json)) return [['', json]];
  return isPlain(json) ? [] : Object.entries(json as object);
}

/**
 * The lists of flat objects in a JSON file: the file itself, or under its keys, as web services
 * answer. None where it is no JSON, or a list of another shape stands at its top.
 */
export function tablesInJson({ bytes }: GivenFile): readonly JsonTable[] {
  const { text } = decode(bytes);
  if (!/^\s*[[{]/.test(text)) return [];
  try {
    return listsIn(JSON.parse(text)).flatMap(([key, list]) =>
      isTable(list) ? [{ key, grid: (decimal) => gridOf(list, decimal) }] : [],
    );
  } catch {
    return [];
  }
}
