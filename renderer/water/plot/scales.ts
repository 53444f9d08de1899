import { scaleLinear, scaleLog } from 'd3';
import { formatShort } from '../../../core/base/numbers.ts';
import type { Axis } from './plot.ts';

export interface Tick {
  readonly value: number;
  /** Absent on a line of the grid that is not named. */
  readonly label?: string;
}

/** From values to pixels, and back by `invert`. */
export function scaleOf({ kind, from, to }: Axis, range: readonly [number, number]) {
  const scale = kind === 'log' ? scaleLog() : scaleLinear();
  return scale.domain([from, to]).range(range);
}

/** Decimals that tell ticks this far apart. */
const decimalsOf = (step: number) => Math.max(0, Math.min(6, Math.ceil(-Math.log10(step) - 1e-9)));

function linearTicks({ from, to }: Axis, most: number, mark: string): Tick[] {
  const values = scaleLinear().domain([from, to]).ticks(most);
  const decimals = decimalsOf(Math.abs((values[1] ?? 1) - (values[0] ?? 0)) || 1);
  return values.map((value) => ({ value, label: formatShort(value, decimals, mark) }));
}

/** Powers of ten are named; over few of them 2 and 5 too. */
function logTicks({ from, to }: Axis, mark: string): Tick[] {
  const named = Math.log10(to / from) <= 2.2 ? ['1', '2', '5'] : ['1'];
  return scaleLog()
    .domain([from, to])
    .ticks(10)
    .map((value) => {
      const isNamed = named.includes(value.toExponential()[0]!);
      return isNamed ? { value, label: formatShort(value, 6, mark) } : { value };
    });
}

/** Lines of the grid in order, with what they are called; `mark` is the decimal mark. */
export function ticksOf(axis: Axis, most: number, mark: string): Tick[] {
  return axis.kind === 'log' ? logTicks(axis, mark) : linearTicks(axis, most, mark);
}

/** Room beside the outermost values, as a share of what they span. */
const room = 0.06;

/** An axis that holds all values; a linear one from nothing where `fromZero`. */
export function axisOver(
  label: string,
  values: readonly number[],
  { fromZero = false, down = false }: { fromZero?: boolean; down?: boolean } = {},
): Axis {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const span = most - least || Math.abs(most) || 1;
  const from = fromZero ? Math.min(0, least) : least - room * span;
  return { kind: 'linear', label, from, to: most + room * span, down };
}

/** A logarithmic axis that holds all values above nothing. */
export function logAxisOver(label: string, values: readonly number[], down = false): Axis {
  const above = values.filter((value) => value > 0);
  const [least, most] = [Math.min(...above), Math.max(...above)];
  const wide = Math.max(1.1, (most / least) ** room);
  return { kind: 'log', label, from: least / wide, to: most * wide, down };
}
