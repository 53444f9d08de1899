import { formatFixed } from '../../base/numbers.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { letterings, solid } from '../pens.ts';
import { paperLength, shows, yAt, type DepthAxis } from '../scale.ts';
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

/** Ticks down the right edge of the depth column, figures at the long ones; zero is ground level. */
export function drawDepthRuler(kit: Kit, { axis, columns, first, last }: View): Item {
  const { tick, figure: every } = steps(axis);
  const right = columns.depth.x + columns.depth.width;
  const items: Item[] = [];
  for (let at = Math.ceil(axis.fromM / tick - 1e-9); at * tick <= axis.toM + 1e-9; at += 1) {
    const depthM = Math.round(at * tick * 100) / 100;
    if (depthM < 0 || !shows({ ...axis, toM: axis.toM + 1e-9 }, depthM, true)) continue;
    const y = yAt(axis, depthM);
    const long = Math.abs(depthM / every - Math.round(depthM / every)) < 1e-6;
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
