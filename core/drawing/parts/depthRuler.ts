import { formatFixed } from '../../base/numbers.ts';
import { mmPerM, type DepthM, type PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { letterings, solid } from '../pens.ts';
import { paperLength, shows, stretchesOf, yAt, type DepthAxis, type DepthRange } from '../scale.ts';
import { group, line } from '../shapes.ts';
import type { View } from './columns.ts';

interface Steps {
  readonly tick: number;
  readonly figure: number;
}

/** Distance of ticks and of figures, metres, by scale (trade practice, from memory). */
function usualSteps(scale: number): Steps {
  if (scale <= 20) return { tick: 0.1, figure: 0.5 };
  if (scale <= 50) return { tick: 0.2, figure: 1 };
  if (scale <= 100) return { tick: 0.5, figure: 1 };
  if (scale <= 200) return { tick: 1, figure: 5 };
  if (scale <= 500) return { tick: 1, figure: 10 };
  if (scale < 1000) return { tick: 2, figure: 10 };
  return { tick: scale / 200, figure: scale / 50 };
}

/** The usual steps; on a page too short for two of its figures, figures as near as print allows. */
function steps({ fromM, toM, scale }: DepthAxis): Steps {
  const usual = usualSteps(scale);
  if (toM - fromM >= 2 * usual.figure) return usual;
  const near = paperLength(usual.tick, scale) < leastPitch ? 2 * usual.tick : usual.tick;
  return { tick: usual.tick, figure: near };
}

/** Figures nearer than this run into each other. */
const leastPitch: PaperMm = 3.5;

function figure(kit: Kit, depthM: number): string {
  const decimals = Number.isInteger(depthM) ? 0 : 1;
  return formatFixed(depthM, decimals, kit.words.decimalMark);
}

/** A figure nearer than this to a break would meet its zigzag. */
const offBreak: PaperMm = 2;

/** Depths of a stretch at which a figure has room. */
function clearPart(axis: DepthAxis, { fromM, toM }: DepthRange): DepthRange {
  const offM = (offBreak * axis.scale) / mmPerM;
  return {
    fromM: fromM === axis.fromM ? fromM : fromM + offM,
    toM: toM === axis.toM ? toM : toM - offM,
  };
}

const firstOf = ({ fromM }: DepthRange, step: number) => Math.ceil(fromM / step - 1e-9) * step;

type Cuts = Pick<View, 'first' | 'last'>;

/** Nearer to a match line than this is on it. */
const onMatchLineM = 1e-6;

/** Whether a stretch has no figure at a round depth; on a match line stands none. */
function isBare(axis: DepthAxis, part: DepthRange, every: number, { first, last }: Cuts): boolean {
  if (axis.leftOut === undefined) return false;
  const fromM = part.fromM + (first || part.fromM > axis.fromM ? 0 : onMatchLineM);
  const toM = part.toM - (last || part.toM < axis.toM ? 0 : onMatchLineM);
  return firstOf({ fromM, toM }, every) > toM;
}

/** Whether a tick has a figure: at round depths, and once in a stretch that holds none of them. */
function hasFigure(
  axis: DepthAxis,
  depthM: DepthM,
  { tick, figure: every }: Steps,
  cuts: Cuts,
): boolean {
  const parts = stretchesOf(axis).map((one) => clearPart(axis, one));
  const part = parts.find(({ fromM, toM }) => depthM >= fromM - 1e-9 && depthM <= toM + 1e-9);
  if (!part) return false;
  const bare = isBare(axis, part, every, cuts);
  const nearest = bare
    ? firstOf({ ...part, fromM: part.fromM + onMatchLineM }, tick)
    : Math.round(depthM / every) * every;
  return Math.abs(nearest - depthM) < 1e-6;
}

/** Ticks down the right edge of the depth column, figures at the long ones; zero is ground level. */
export function drawDepthRuler(kit: Kit, { axis, columns, first, last }: View): Item {
  const step = steps(axis);
  const { tick } = step;
  const right = columns.depth.x + columns.depth.width;
  const items: Item[] = [];
  for (let at = Math.ceil(axis.fromM / tick - 1e-9); at * tick <= axis.toM + 1e-9; at += 1) {
    const depthM = Math.round(at * tick * 100) / 100;
    if (depthM < 0 || !shows({ ...axis, toM: axis.toM + 1e-9 }, depthM, true)) continue;
    const y = yAt(axis, depthM);
    const long = hasFigure(axis, depthM, step, { first, last });
    items.push(line([right - (long ? 3 : 1.5), y], [right, y], solid(long ? 'narrow' : 'thin')));
    const cutHere = (depthM === axis.fromM && !first) || (depthM === axis.toM && !last);
    if (long && !cutHere)
      items.push(
        ...letter(kit, figure(kit, depthM), right - 3.6, y + letterings.small / 2, {
          anchor: 'end',
          face: depthM === 0 && first ? 'bold' : 'regular',
        }),
      );
  }
  return group('depthRuler', items);
}
