import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { Desk } from '../desk.ts';

/** Texts that are still only typed in one row, by what follows the row in their paths. */
export type TypedRow = Readonly<Record<string, string>>;

/** Number of the row that a path lies in, and what follows it; undefined outside the list. */
function within(list: RecordPath, key: RecordPath): { index: number; rest: string } | undefined {
  if (!key.startsWith(`${list}[`)) return undefined;
  const rest = key.slice(list.length + 1);
  return { index: Number.parseInt(rest, 10), rest: rest.slice(rest.indexOf(']') + 1) };
}

/**
 * Carries texts that are still only typed along when rows change their places: `to` says where a
 * row stands afterwards, undefined where it is gone.
 */
export function rekeyed(
  desk: Desk,
  list: RecordPath,
  to: (index: number) => number | undefined,
): Desk['typed'] {
  const typed: Record<RecordPath, string> = {};
  for (const [key, text] of Object.entries(desk.typed)) {
    const place = within(list, key);
    const index = place === undefined ? undefined : to(place.index);
    if (place === undefined) typed[key] = text;
    else if (index !== undefined) typed[`${list}[${index}]${place.rest}`] = text;
  }
  return typed;
}

/** The texts of one row, apart from where it stands. */
export function typedRow(desk: Desk, list: RecordPath, index: number): TypedRow {
  const row: Record<string, string> = {};
  for (const [key, text] of Object.entries(desk.typed)) {
    const place = within(list, key);
    if (place?.index === index) row[place.rest] = text;
  }
  return row;
}

/** Those texts at a place again. */
export function withTypedRow(
  typed: Desk['typed'],
  list: RecordPath,
  index: number,
  row: TypedRow,
): Desk['typed'] {
  const added = Object.entries(row).map(([rest, text]) => [`${list}[${index}]${rest}`, text]);
  return { ...typed, ...(Object.fromEntries(added) as Record<string, string>) };
}
