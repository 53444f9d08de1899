import type { PaperMm } from '../../../base/units.ts';
import type { BinderWell } from '../binderWell.ts';
import type { Item, Segment } from '../../items.ts';
import { wellSigns } from '../../map/signs.ts';
import { black, solid, white } from '../../pens.ts';
import { circle, type Point } from '../../shapes.ts';

/** Half the side of the box that a sign stands in. */
export const signHalf: PaperMm = 1.25;

const numbers = (text: string) =>
  text
    .trim()
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(Number);

/**
 * Straight outlines of a sign: moves, lines across and down, closes. Arcs are full circles about
 * its middle and are drawn as such.
 */
function segmentsOf(outline: string, [cx, cy]: Point): Segment[] {
  let [x, y] = [0, 0];
  const at = (): readonly [PaperMm, PaperMm] => [cx + x * signHalf, cy + y * signHalf];
  return [...outline.matchAll(/([MLHVZ])([^MLHVZ]*)/g)].flatMap(
    ([, step, rest = '']): Segment[] => {
      const values = numbers(rest.replace(/(?!^)-/g, ' -'));
      if (step === 'Z') return [['Z']];
      if (step === 'H') x = values[0]!;
      else if (step === 'V') y = values[0]!;
      else [x, y] = values as [number, number];
      return [[step === 'M' ? 'M' : 'L', ...at()]];
    },
  );
}

/** The sign of a well's state about a point, on white, so that lines under it do not run through. */
export function drawWellSign(state: BinderWell['state'], point: Point): Item {
  const { outline, filled } = wellSigns[state];
  const stroke = solid('narrow');
  const radius = /A([\d.]+)/.exec(outline)?.[1];
  if (radius !== undefined)
    return circle(point, Number(radius) * signHalf, { stroke, fill: filled ? black : white });
  const closed = outline.includes('Z');
  return {
    kind: 'path',
    segments: segmentsOf(outline, point),
    stroke,
    ...(closed && { fill: filled ? black : white }),
  };
}
