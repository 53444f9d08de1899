import type { HeldParameter } from '../guidelines/guidelineSet.ts';
import type { Direction, Reading, Trend } from '../results.ts';
import { bandOf } from './bands.ts';
import { readUnit } from '../units/readUnit.ts';

/** Two tests of one water seldom agree better than this (common practice). */
const sameShare = 0.1;

type Known = Reading & { readonly value: number };

function isKnown(reading: Reading): reading is Known {
  return reading.value !== undefined && reading.at !== undefined;
}

/** One reading for each sample: the highest. */
function ofSamples(readings: readonly Reading[]): Known[] {
  const tellingAll = readings.filter(isKnown);
  return tellingAll.filter(
    (one, at) =>
      !tellingAll.some(
        (other, place) =>
          other.sample === one.sample &&
          (other.value > one.value || (other.value === one.value && place < at)),
      ),
  );
}

/** What lies below its detection limit is known to lie under a figure, not where. */
function directionBelow(from: Known, to: Known): Direction {
  if (from.below && to.below) return from.value === to.value ? 'same' : 'unclear';
  if (from.below) return to.value > from.value ? 'up' : 'unclear';
  return to.value < from.value ? 'down' : 'unclear';
}

/** Colonies scatter too much to be compared but by their bands. */
function directionOf(parameter: HeldParameter, from: Known, to: Known): Direction {
  if (parameter.bands && readUnit(parameter.unit)?.kind === 'count') {
    const [first, last] = [bandOf(parameter, from), bandOf(parameter, to)];
    if (first === undefined || last === undefined) return 'unclear';
    if (first === last) return 'same';
    return to.value > from.value ? 'up' : 'down';
  }
  if (from.below || to.below) return directionBelow(from, to);
  const change = to.value - from.value;
  if (Math.abs(change) <= sameShare * Math.max(Math.abs(from.value), Math.abs(to.value)))
    return 'same';
  return change > 0 ? 'up' : 'down';
}

/**
 * The first and the last of repeated samples, and whether it went one way. Readings without a day
 * or a figure are left out; absent where fewer than two samples are left. `readings` in order of
 * time.
 */
export function trendOf(parameter: HeldParameter, readings: readonly Reading[]): Trend | undefined {
  const series = ofSamples(readings);
  const [first, last] = [series[0], series.at(-1)];
  if (!first || !last || series.length < 2) return undefined;
  const direction = directionOf(parameter, first, last);
  const steps = series.slice(1).map((reading, at) => directionOf(parameter, series[at]!, reading));
  const steady =
    steps.length > 1 &&
    (direction === 'up' || direction === 'down') &&
    steps.every((step) => step === direction);
  return { first, last, count: series.length, direction, steady };
}
