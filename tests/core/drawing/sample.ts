import { readFileSync } from 'node:fs';
import type { Fonts } from '../../../core/base/text/metrics.ts';
import type { Item, PathItem, RegionItem, TextItem } from '../../../core/drawing/items.ts';
import type { Kit } from '../../../core/drawing/kit.ts';
import type { SwitchedColumn } from '../../../core/drawing/parts/columnNames.ts';
import type { View } from '../../../core/drawing/parts/columns.ts';
import { english } from '../../../core/drawing/words/en.ts';
import { french } from '../../../core/drawing/words/fr.ts';
import type { DepthRange } from '../../../core/drawing/scale.ts';
import type { Stratum } from '../../../core/model/wellModel.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import { placedOn } from '../../sheets/placed.ts';
import { columnsOver } from './usualColumns.ts';

const metrics = new URL('../../../assets/fonts/metrics.json', import.meta.url);
const fonts = JSON.parse(readFileSync(metrics, 'utf8')) as Fonts;

export const kit: Kit = { fonts, words: english };

/** The same in a language whose words are longer, with other marks. */
export const frenchKit: Kit = { fonts, words: french };

interface ViewChoice {
  readonly fromM?: number;
  readonly toM?: number;
  readonly scale?: number;
  readonly widthScale?: number | undefined;
  readonly first?: boolean;
  readonly last?: boolean;
  readonly leftOut?: readonly DepthRange[];
  readonly columns?: readonly SwitchedColumn[];
}

/** A page's view of 0 to 30 m at 1:200, diameters at 1:10, where nothing else is asked. */
export function viewOf(choice: ViewChoice = {}): View {
  const { fromM = 0, toM = 30, scale = 200, first = true, last = true } = choice;
  const widthScale = 'widthScale' in choice ? choice.widthScale : 10;
  const top = 24;
  return {
    axis: { fromM, toM, scale, top, ...(choice.leftOut && { leftOut: choice.leftOut }) },
    columns: columnsOver(20, 180, choice.columns),
    body: { x: 20, y: 19.5, width: 180, height: ((toM - fromM) * 1000) / scale + 9 },
    ...(widthScale !== undefined && { widthScale }),
    first,
    last,
  };
}

export function stratum(fromM: number, toM: number, more: Partial<LogInterval> = {}): Stratum {
  const interval = { from: fromM, to: toM, ...more };
  return { fromM, toM, interval, path: `log[${fromM}]`, others: [] };
}

function leaves(items: Item | readonly Item[]) {
  const all = Array.isArray(items) ? (items as readonly Item[]) : [items as Item];
  return placedOn({ width: 0, height: 0, items: all });
}

export function textsOf(items: Item | readonly Item[]): TextItem[] {
  return leaves(items).flatMap(({ item }) => (item.kind === 'text' ? [item] : []));
}

/** The words of some items, one string a text, in painting order. */
export function wordsOf(items: Item | readonly Item[]): string[] {
  return textsOf(items).map(({ text }) => text);
}

export function pathsOf(items: Item | readonly Item[]): PathItem[] {
  return leaves(items).flatMap(({ item }) => (item.kind === 'path' ? [item] : []));
}

export function regionsOf(items: Item | readonly Item[]): RegionItem[] {
  return leaves(items).flatMap(({ item }) => (item.kind === 'region' ? [item] : []));
}

/** The points of an outline, without its closing step. */
export function pointsOf({ segments }: PathItem | RegionItem): [number, number][] {
  return segments.flatMap((one) => (one[0] === 'Z' ? [] : [[one[1], one[2]] as [number, number]]));
}
