/** Values from one bound up to, not including, the next. */
export interface ValueClass {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

const mostClasses = 12;

/** The next of 1, 2 and 5 times a power of ten at or above a width. */
function roundWidth(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least) + 1e-9);
  return [1, 2, 5, 10].find((one) => one * power >= least * (1 - 1e-9))! * power;
}

/**
 * Values from nothing up in at most twelve classes of one round width, empty ones among them; none
 * without a value. A value on a bound counts to the class above it.
 */
export function classesOf(values: readonly number[]): ValueClass[] {
  if (values.length === 0) return [];
  const most = values.reduce((a, b) => Math.max(a, b), 0);
  const width = roundWidth(Math.max(most, Number.MIN_VALUE * 1e10) / mostClasses);
  // A little over, so that 0.3 counts to the class from 0.3 whatever doubles make of it.
  const classAt = (value: number) => Math.floor(value / width + 1e-9);
  const counts = new Map<number, number>();
  for (const value of values) counts.set(classAt(value), (counts.get(classAt(value)) ?? 0) + 1);
  return Array.from({ length: classAt(most) + 1 }, (_, at) => ({
    from: at * width,
    to: (at + 1) * width,
    count: counts.get(at) ?? 0,
  }));
}
