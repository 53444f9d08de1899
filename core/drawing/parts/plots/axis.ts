import { formatFixed, formatShort } from '../../../base/numbers.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Kit } from '../../kit.ts';

/** Values along one edge of a plot. */
export interface Axis {
  readonly kind: 'linear' | 'log';
  readonly from: number;
  readonly to: number;
  /** Grows downwards or to the left. */
  readonly backwards?: boolean;
}

export interface Tick {
  readonly value: number;
  /** Absent of a tick between those that are named. */
  readonly label?: string;
}

/** Share of an axis at which a value lies, 0 at `from`, 1 at `to`. */
export function shareAt({ kind, from, to }: Axis, value: number): number {
  return kind === 'log'
    ? Math.log10(value / from) / Math.log10(to / from)
    : (value - from) / (to - from);
}

/** Where a value lies on an edge that begins at `start`. */
export function placeAt(axis: Axis, value: number, start: PaperMm, length: PaperMm): PaperMm {
  const share = shareAt(axis, value);
  return start + length * (axis.backwards ? 1 - share : share);
}

/** The next of 1, 2, 5, 10, 20 … at or above a distance. */
function roundStep(distance: number): number {
  const power = 10 ** Math.floor(Math.log10(distance));
  return [1, 2, 5, 10].find((step) => step * power >= distance * (1 - 1e-9))! * power;
}

/** Ticks of a linear axis, at most `most`, on round values. */
function linearTicks(kit: Kit, { from, to }: Axis, most: number): Tick[] {
  const step = roundStep((to - from) / most);
  const decimals = Math.min(9, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
  const first = Math.ceil(from / step - 1e-6);
  const count = Math.floor(to / step + 1e-6) - first + 1;
  return Array.from({ length: Math.min(count, most + 1) }, (_, at) => {
    const value = (first + at) * step;
    return { value, label: formatFixed(value, decimals, kit.words.decimalMark) };
  });
}

/** Named twos and fives stand over no more decades than these. */
const fewDecades = 3;

/** A power of ten that would be a long row of noughts is written by its exponent. */
function powerLabel(kit: Kit, value: number): string {
  const long = value >= 1e6 || value < 1e-5;
  return long ? value.toExponential() : formatShort(value, 6, kit.words.decimalMark);
}

/** Ticks of a logarithmic axis: all of 1 to 9 in each decade, of which few are named. */
function logTicks(kit: Kit, { from, to }: Axis): Tick[] {
  const [first, last] = [Math.floor(Math.log10(from)), Math.ceil(Math.log10(to))];
  const decades = last - first;
  const named = Math.log10(to / from) <= fewDecades ? [1, 2, 5] : [1];
  const every = Math.ceil(decades / 8);
  const digits = decades > 8 ? [1] : [1, 2, 3, 4, 5, 6, 7, 8, 9];
  return Array.from({ length: decades + 1 }, (_, at) => first + at).flatMap((power) =>
    digits
      .map((digit) => ({ digit, value: digit * 10 ** power }))
      .filter(({ value }) => value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9))
      .map(({ digit, value }): Tick => {
        const isNamed = named.includes(digit) && (power - first) % every === 0;
        return isNamed ? { value, label: powerLabel(kit, value) } : { value };
      }),
  );
}

export function ticksOf(kit: Kit, axis: Axis, most: number): Tick[] {
  return axis.kind === 'log' ? logTicks(kit, axis) : linearTicks(kit, axis, most);
}

/** What spans less than this is one value. */
const leastSpan = 1e-9;

/** A linear axis that holds all values and ends on a round one; from nothing where that is near. */
export function linearAxis(values: readonly number[], extra: { backwards?: boolean } = {}): Axis {
  const [least, most] = [Math.min(0, ...values), Math.max(0, ...values)];
  const span = most - least > leastSpan ? most - least : 1;
  const step = roundStep(span / 5);
  const from = Math.floor(least / step + 1e-9) * step;
  const to = Math.max(from + step, Math.ceil(most / step - 1e-9) * step);
  return { kind: 'linear', from, to, ...extra };
}

/** Ends of a decade where a logarithmic axis may begin or end. */
const digits = [1, 2, 5, 10];

/** A logarithmic axis that holds all values above nothing, from a round one to another. */
export function logAxis(values: readonly number[], extra: { backwards?: boolean } = {}): Axis {
  const above = values.filter((value) => value > 0);
  const [least, most] = above.length === 0 ? [1, 10] : [Math.min(...above), Math.max(...above)];
  const under = (value: number) => {
    const power = 10 ** Math.floor(Math.log10(value));
    return digits.findLast((digit) => digit * power <= value * (1 + 1e-9))! * power;
  };
  const over = (value: number) => {
    const power = 10 ** Math.floor(Math.log10(value));
    return digits.find((digit) => digit * power >= value * (1 - 1e-9))! * power;
  };
  const [from, to] = [under(least), over(most)];
  return { kind: 'log', from, to: to > from * 1.5 ? to : from * 10, ...extra };
}
