import { limits } from '../limits.ts';
import type { AssumptionCode } from '../codes.ts';
import type { Minutes, Said } from '../results.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { SeriesReading } from './readSeries.ts';

/** Readings of one step; their minutes count from its start. */
export interface Step {
  readonly number: number;
  readonly fromMin: Minutes;
  readonly lengthMin: Minutes;
  readonly rows: readonly SeriesReading[];
}

export interface Steps {
  readonly steps: readonly Step[];
  readonly assumptions: readonly Said<AssumptionCode>[];
}

function ratesDiffer(a: number | undefined, b: number | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  return Math.abs(a - b) > limits.rateSpread * Math.max(a, b);
}

/** Without numbers a step begins where the minutes start again or the rate changes. */
function groupByRate(rows: readonly SeriesReading[]): SeriesReading[][] {
  const groups: SeriesReading[][] = [];
  let rate: number | undefined;
  for (const row of rows) {
    const last = groups.at(-1)?.at(-1);
    if (!last || row.minutes < last.minutes || ratesDiffer(rate, row.rateM3h)) {
      groups.push([row]);
      rate = row.rateM3h;
    } else groups.at(-1)!.push(row);
    rate ??= row.rateM3h;
  }
  return groups;
}

function groupByNumber(rows: readonly SeriesReading[]): SeriesReading[][] {
  const numbers = [...new Set(rows.map(({ step }) => step!))].sort((a, b) => a - b);
  return numbers.map((number) => rows.filter(({ step }) => step === number));
}

const lastOf = (group: readonly SeriesReading[]) =>
  Math.max(...group.map(({ minutes }) => minutes));
const firstOf = (group: readonly SeriesReading[]) =>
  Math.min(...group.map(({ minutes }) => minutes));

/** Whether the minutes go on from step to step instead of starting again with each. */
function runOn(groups: readonly (readonly SeriesReading[])[], pumpedMin: Minutes | undefined) {
  const rises = groups.slice(1).every((group, at) => firstOf(group) > lastOf(groups[at]!));
  const end = groups.length === 0 ? 0 : lastOf(groups.at(-1)!);
  return groups.length > 1 && rises && (pumpedMin === undefined || end > 0.75 * pumpedMin);
}

function cumulative(groups: readonly SeriesReading[][]): Step[] {
  return groups.map((group, at) => {
    const fromMin = at === 0 ? 0 : lastOf(groups[at - 1]!);
    const rows = group.map((row) => ({ ...row, minutes: row.minutes - fromMin }));
    return { number: at + 1, fromMin, lengthMin: lastOf(rows), rows };
  });
}

/** Steps follow each other; one is as long as its share of the whole, or as its readings tell. */
function since(groups: readonly SeriesReading[][], pumpedMin: Minutes | undefined): Step[] {
  const share = pumpedMin === undefined ? 0 : pumpedMin / groups.length;
  const fits = groups.every((group) => lastOf(group) <= share * 1.001);
  const lengths = groups.map((group) => (fits ? share : lastOf(group)));
  return groups.map((rows, at) => ({
    number: at + 1,
    fromMin: lengths.slice(0, at).reduce((sum, length) => sum + length, 0),
    lengthMin: lengths[at]!,
    rows,
  }));
}

/** The steps of a step test with their starts. */
export function stepsOf(rows: readonly SeriesReading[], { minutesPumped }: PumpingTest): Steps {
  const numbered = rows.every(({ step }) => step !== undefined);
  const groups = numbered ? groupByNumber(rows) : groupByRate(rows);
  const on = runOn(groups, minutesPumped);
  const codes: AssumptionCode[] = [
    ...(numbered ? [] : (['stepsByRate'] as const)),
    ...(on ? (['minutesRunOn'] as const) : []),
  ];
  return {
    steps: on ? cumulative(groups) : since(groups, minutesPumped),
    assumptions: codes.map((code) => ({ code, values: {} })),
  };
}
