import type { DrillingMethod } from '../../core/record/bore.ts';
import type { PumpKind } from '../../core/record/headworks.ts';
import type { MapWell } from '../../core/contract/listShape.ts';
import { say, sheetWords } from '../parts/words.ts';

/** Formats by language: making one takes longer than using it a hundred times. */
const known = new Map<string, Intl.DateTimeFormat | Intl.NumberFormat>();

function kept<T extends Intl.DateTimeFormat | Intl.NumberFormat>(key: string, make: () => T): T {
  const format = (known.get(key) as T | undefined) ?? make();
  known.set(key, format);
  return format;
}

/** A moment on this computer's clock, as the language in use writes it. */
export function shownDate(iso: string): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  const format = kept(
    `date ${say.tag}`,
    () => new Intl.DateTimeFormat(say.tag, { dateStyle: 'medium', timeStyle: 'short' }),
  );
  return format.format(date);
}

/** A number with at most so many decimals, as the language in use writes it. */
export function shownNumber(value: number, decimals = 0): string {
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return kept(`${decimals} ${say.tag}`, () => new Intl.NumberFormat(say.tag, digits)).format(value);
}

/** An amount that a person wrote, with the decimals that it has. */
export function shownAmount(value: number): string {
  return shownNumber(value, String(value).split('.')[1]?.length ?? 0);
}

/** A well by its number, or by that it has none. */
export function shownWell({ number }: Pick<MapWell, 'number'>): string {
  return number || say.archive.noNumber;
}

export function shownMethod(method: DrillingMethod | ''): string {
  return method === '' ? say.archive.notWritten : sheetWords().methods[method];
}

export function shownPump(pump: PumpKind | ''): string {
  return pump === '' ? say.archive.notWritten : sheetWords().pumps[pump];
}

export function shownState(state: MapWell['state']): string {
  return state === '' ? say.archive.map.noState : sheetWords().states[state];
}

/** The size of a file in megabytes, as the language in use writes it. */
export function shownSize(bytes: number): string {
  return say.copies.megabytes(shownNumber(bytes / 1_000_000, 1));
}
