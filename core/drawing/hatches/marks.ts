import type { PaperMm } from '../../base/units.ts';
import type { PathItem, Segment } from '../items.ts';
import { black, pens, type Pen } from '../pens.ts';
import { circle, type Point } from '../shapes.ts';

/** Marks of hatches. A mark stands about its own middle until it is placed. */

/** Smallest that survives a copier, millimetres (advice in the trade; from memory). */
const dotDiameter: PaperMm = 0.45;

const middle: Point = [0, 0];

export interface MarkLook {
  readonly pen?: Pen;
  /** Degrees clockwise. */
  readonly turn?: number;
  readonly filled?: boolean;
  readonly closed?: boolean;
}

/** Thousandths of a millimetre: the same figures on every machine. */
export function rounded(value: PaperMm): PaperMm {
  return Math.round(value * 1000) / 1000 || 0;
}

function mapped(mark: PathItem, to: (x: number, y: number) => Point): PathItem {
  const segments = mark.segments.map((segment): Segment => {
    const [kind, ...figures] = segment;
    const points: number[] = [];
    for (let at = 0; at < figures.length; at += 2)
      points.push(...to(figures[at]!, figures[at + 1]!).map(rounded));
    return [kind, ...points] as unknown as Segment;
  });
  return { ...mark, segments };
}

export function moved(mark: PathItem, [dx, dy]: Point): PathItem {
  return mapped(mark, (x, y) => [x + dx, y + dy]);
}

/** Turned about its own middle, degrees clockwise. */
export function turned(mark: PathItem, degrees: number): PathItem {
  const angle = (degrees * Math.PI) / 180;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return mapped(mark, (x, y) => [x * cos - y * sin, x * sin + y * cos]);
}

/** Lines that belong together, each a list of points. */
export function strokes(lines: readonly (readonly Point[])[], look: MarkLook = {}): PathItem {
  const { pen = 'thin', turn = 0, filled = false, closed = false } = look;
  const segments = lines.flatMap((points) => [
    ...points.map(([x, y], at): Segment => [at === 0 ? 'M' : 'L', x, y]),
    ...(closed ? [['Z'] as const] : []),
  ]);
  const paint = filled ? { fill: black } : { stroke: { ink: black, width: pens[pen] } };
  return turned({ kind: 'path', segments, ...paint }, turn);
}

export function dot(diameter: PaperMm = dotDiameter): PathItem {
  return turned(circle(middle, diameter / 2, { fill: black }), 0);
}

/** `diameter` counts to the outside of the line. */
export function ring(diameter: PaperMm, pen: Pen = 'thin'): PathItem {
  const stroke = { ink: black, width: pens[pen] };
  return turned(circle(middle, (diameter - pens[pen]) / 2, { stroke }), 0);
}

/** A ring pressed flat: a pebble or a lump. */
export function oval(width: PaperMm, height: PaperMm, look: MarkLook = {}): PathItem {
  const whole = look.filled ? dot(width) : ring(width, look.pen);
  return turned(
    mapped(whole, (x, y) => [x, (y * height) / width]),
    look.turn ?? 0,
  );
}

export function dash(length: PaperMm, look: MarkLook = {}): PathItem {
  const end = length / 2;
  return strokes(
    [
      [
        [-end, 0],
        [end, 0],
      ],
    ],
    look,
  );
}

/** Dashes of one length under each other, `pitch` apart. */
export function dashes(count: number, length: PaperMm, pitch: PaperMm, look: MarkLook = {}) {
  const lines = Array.from({ length: count }, (_, at): Point[] => {
    const y = (at - (count - 1) / 2) * pitch;
    return [
      [-length / 2, y],
      [length / 2, y],
    ];
  });
  return strokes(lines, look);
}

/** Two strokes that cross at right angles: a plus sign, or a cross when turned by 45°. */
export function plus(size: PaperMm, look: MarkLook = {}): PathItem {
  const end = size / 2;
  return strokes(
    [
      [
        [-end, 0],
        [end, 0],
      ],
      [
        [0, -end],
        [0, end],
      ],
    ],
    look,
  );
}

/** A corner of as many points as wanted, evenly about the middle: 3 a triangle, 4 a lozenge. */
export function polygon(corners: number, size: PaperMm, look: MarkLook = {}): PathItem {
  const points = Array.from({ length: corners }, (_, at): Point => {
    const angle = (at / corners) * 2 * Math.PI - Math.PI / 2;
    return [(size / 2) * Math.cos(angle), (size / 2) * Math.sin(angle)];
  });
  return strokes([points], { ...look, closed: true });
}

/** A lozenge lying flat. */
export function lozenge(width: PaperMm, height: PaperMm, look: MarkLook = {}): PathItem {
  const points: Point[] = [
    [-width / 2, 0],
    [0, -height / 2],
    [width / 2, 0],
    [0, height / 2],
  ];
  return strokes([points], { ...look, closed: true });
}

/**
 * A wave about a level line from x = 0, of `halves` half waves each `half` long. Each half is one
 * curve; a cubic's crown stands at three quarters of its handles.
 */
export function wave(
  half: PaperMm,
  halves: number,
  rise: PaperMm,
  { pen = 'thin' }: MarkLook = {},
): PathItem {
  const segments: Segment[] = [['M', 0, 0]];
  for (let at = 0; at < halves; at++) {
    const handle = ((at % 2 === 0 ? -1 : 1) * rise * 4) / 3;
    const x = at * half;
    segments.push(['C', x + half * 0.36, handle, x + half * 0.64, handle, x + half, 0]);
  }
  return turned({ kind: 'path', segments, stroke: { ink: black, width: pens[pen] } }, 0);
}

/** A short wave about its own middle. */
export function ripple(length: PaperMm, halves: number, rise: PaperMm, look: MarkLook = {}) {
  const pen = look.pen ?? 'thin';
  const level = moved(wave(length / halves, halves, rise, { pen }), [-length / 2, 0]);
  return turned(level, look.turn ?? 0);
}

/** A stone: the corners given, rounded off by curves from the middle of one side to the next. */
export function rounding(corners: readonly Point[], look: MarkLook = {}): PathItem {
  const between = (a: Point, b: Point, share: number): Point => [
    a[0] + (b[0] - a[0]) * share,
    a[1] + (b[1] - a[1]) * share,
  ];
  const curves = corners.map((corner, one): Segment => {
    const before = corners.at(one - 1)!;
    const after = corners[(one + 1) % corners.length]!;
    const [from, to] = [between(before, corner, 0.5), between(corner, after, 0.5)];
    return ['C', ...between(from, corner, 0.75), ...between(to, corner, 0.75), ...to];
  });
  const start = between(corners.at(-1)!, corners[0]!, 0.5);
  const stroke = { ink: black, width: pens[look.pen ?? 'thin'] };
  return turned(
    { kind: 'path', segments: [['M', ...start], ...curves, ['Z']], stroke },
    look.turn ?? 0,
  );
}
