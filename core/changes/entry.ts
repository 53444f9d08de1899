import { formatFixed, formatShort } from '../base/numbers.ts';
import type { SheetWords } from '../drawing/words/words.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Chapter } from './chapters.ts';
import type { ChangeWords } from './words/words.ts';

/** One thing that a record says: two records are compared by them. */
export interface Entry {
  readonly chapter: Chapter;
  /** Tells it from others of its chapter; the same thing has the same key in both records. */
  readonly key: string;
  /** What it is, in words. */
  readonly what: string;
  /** What is known of it, in words and always in one order; empty where a part is not known. */
  readonly parts: readonly string[];
}

/** A record with all that its entries are worded from. */
export interface Told {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly sheet: SheetWords;
  readonly words: ChangeWords;
}

/** An entry of the parts that are known; none where nothing is known. */
export function entry(
  chapter: Chapter,
  key: string,
  what: string,
  parts: readonly (string | undefined)[],
): Entry[] {
  const said = parts.map((part) => part ?? '');
  if (said.every((part) => part === '')) return [];
  return [{ chapter, key, what: capitalised(what), parts: said }];
}

export function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** A figure with its unit, at most `decimals` decimals; undefined where it is not known. */
export function figure(
  { sheet }: Told,
  value: number | undefined,
  unit: string,
  decimals = 2,
): string | undefined {
  return value === undefined
    ? undefined
    : `${formatShort(value, decimals, sheet.decimalMark)} ${unit}`.trim();
}

/** A depth, metres, to the centimetre. */
export function depthWords({ sheet }: Told, metres: number): string {
  return `${formatFixed(metres, 2, sheet.decimalMark)} m`;
}

export function rangeWords(told: Told, fromM: number, toM: number): string {
  const from = formatFixed(fromM, 2, told.sheet.decimalMark);
  return `${from}–${depthWords(told, toM)}`;
}
