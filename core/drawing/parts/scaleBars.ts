import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { black, solid } from '../pens.ts';
import { paperLength } from '../scale.ts';
import { group, line, rectangle } from '../shapes.ts';
import { plainFigure } from '../figures.ts';

export const scaleBarsHeight: PaperMm = 9;

/** A line of exactly 100 mm with end ticks, to tell whether the print is true. */
function drawCheckLine(kit: Kit, x: PaperMm, y: PaperMm): Item {
  return group('checkLine', [
    line([x, y], [x + 100, y], solid('narrow')),
    ...[0, 50, 100].map((at) => line([x + at, y - 1.2], [x + at, y + 1.2], solid('narrow'))),
    ...letter(kit, kit.words.scaleBars.check, x, y + 4.2, { widest: 104 }),
  ]);
}

/** The longest round length (1, 2 or 5 and tens) whose bar is no longer than the room. */
function roundLength(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return [5, 2, 1].map((step) => step * power).find((one) => one <= most * (1 + 1e-9)) ?? power;
}

export interface Bar {
  /** 20 for 1:20, 0.5 for 2:1. */
  readonly scale: number;
  readonly unit: 'm' | 'mm';
  readonly says: string;
}

/** `1:20`, or `2:1` for what is drawn larger than it is. */
export function scaleWords(scale: number): string {
  return scale < 1 ? `${1 / scale}:1` : `1:${scale}`;
}

/** A bar of a round length, half of it black, with its scale under it; `y` is its middle. */
export function drawBar(kit: Kit, bar: Bar, x: PaperMm, y: PaperMm, room: PaperMm): Item {
  const unitMm = bar.unit === 'm' ? 1000 : 1;
  const value = roundLength((room * bar.scale) / unitMm);
  const length = paperLength((value * unitMm) / 1000, bar.scale);
  const figure = (part: number) => plainFigure(kit, part, 2);
  return group('scaleBar', [
    rectangle({ x, y: y - 0.5, width: length / 2, height: 1 }, { fill: black }),
    rectangle({ x, y: y - 0.5, width: length, height: 1 }, { stroke: solid('thin') }),
    ...letter(kit, '0', x, y - 1.2, { anchor: 'middle' }),
    ...letter(kit, figure(value / 2), x + length / 2, y - 1.2, { anchor: 'middle' }),
    ...letter(kit, `${figure(value)} ${bar.unit}`, x + length - 0.7, y - 1.2),
    ...letter(kit, `${bar.says} ${scaleWords(bar.scale)}`, x, y + 3.6, { face: 'bold' }),
  ]);
}

/** Check line, bar of depths and bar of diameters; `y` is the upper edge of the strip. */
export function drawScaleBars(
  kit: Kit,
  depthScale: number,
  widthScale: number | undefined,
  x: PaperMm,
  y: PaperMm,
): Item {
  const { depth, width } = kit.words.scaleBars;
  const level = y + 3.6;
  return group('scaleBars', [
    drawCheckLine(kit, x + 1, level),
    drawBar(kit, { scale: depthScale, unit: 'm', says: depth }, x + 111, level, 20),
    ...(widthScale === undefined
      ? []
      : [drawBar(kit, { scale: widthScale, unit: 'mm', says: width }, x + 143, level, 20)]),
  ]);
}
