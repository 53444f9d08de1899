import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item, Stroke } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter, widthOf } from '../../letters.ts';
import { lineHeight, solid } from '../../pens.ts';
import { group, line, polyline, rectangle, type Point } from '../../shapes.ts';
import { placeAt, ticksOf, type Axis, type Tick } from './axis.ts';
import { drawSign, signReach, type Sign } from './signs.ts';

/** A point of a plot, in the units of its axes. */
export type Value = readonly [x: number, y: number];

export interface PlottedPoint {
  readonly at: Value;
  readonly source?: RecordPath;
}

/** Points that share a sign; they stand in the key by their name. */
export interface PointSeries {
  readonly name: string;
  readonly sign: Sign;
  readonly points: readonly PlottedPoint[];
}

export interface LineSeries {
  /** Absent of a line that the key does not name. */
  readonly name?: string;
  readonly stroke: Stroke;
  readonly points: readonly Value[];
}

export interface Plot {
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  /** With the unit. */
  readonly xTitle: string;
  readonly yTitle: string;
  readonly lines: readonly LineSeries[];
  readonly points: readonly PointSeries[];
  readonly source?: RecordPath;
}

const pitch = lineHeight('small');
const tickLength: PaperMm = 1;
const labelGap: PaperMm = 0.8;
/** Linear axes end on one of so many ticks, since they end on a fifth of what they span. */
const mostTicks = 6;
/** Between figures along an edge. */
const apart: PaperMm = 1.6;

/** Labels that would meet the one before are left out; the ticks stay. */
function withoutMeeting(
  ticks: readonly Tick[],
  span: (tick: Tick) => readonly [PaperMm, PaperMm],
): Tick[] {
  const kept: (readonly [PaperMm, PaperMm])[] = [];
  return ticks.map((tick) => {
    if (tick.label === undefined) return tick;
    const [from, to] = span(tick);
    const meets = kept.some(([start, end]) => from < end + apart && to > start - apart);
    if (meets) return { value: tick.value };
    kept.push([from, to]);
    return tick;
  });
}

function drawGrid({ x, y, width, height }: Box, across: PaperMm[], down: PaperMm[]): Item[] {
  const inside = (at: PaperMm, from: PaperMm, length: PaperMm) =>
    at > from + 0.05 && at < from + length - 0.05;
  return [
    ...across
      .filter((at) => inside(at, x, width))
      .map((at) => line([at, y], [at, y + height], solid('hair'))),
    ...down
      .filter((at) => inside(at, y, height))
      .map((at) => line([x, at], [x + width, at], solid('hair'))),
  ];
}

/** Title of the upright axis at the left, the key of signs and lines behind it. */
function drawKey(kit: Kit, plot: Plot, x: PaperMm, y: PaperMm, width: PaperMm): Item[] {
  const base = y + baseline('small');
  const middle = base - 0.9;
  const sample: PaperMm = 8;
  const named = [
    ...plot.points
      .filter(({ points }) => points.length > 0)
      .map(({ name, sign }) => ({
        name,
        draw: (at: PaperMm) => [drawSign(sign, [at + sample / 2, middle])],
      })),
    ...plot.lines.flatMap(({ name, stroke }) =>
      name === undefined
        ? []
        : [
            {
              name,
              draw: (at: PaperMm) => [line([at, middle], [at + sample, middle], stroke)],
            },
          ],
    ),
  ];
  let at = x + widthOf(kit, plot.yTitle) + 4;
  return [
    ...letter(kit, plot.yTitle, x, base, { widest: width }),
    ...named.flatMap(({ name, draw }) => {
      const start = at;
      at += sample + 1 + widthOf(kit, name) + 3;
      if (at - 3 > x + width) return [];
      return [...draw(start), ...letter(kit, name, start + sample + 1, base)];
    }),
  ];
}

interface Edges {
  readonly area: Box;
  readonly across: readonly Tick[];
  readonly down: readonly Tick[];
}

/** The area of the curves, when titles and figures have their room. */
function edgesOf(kit: Kit, { x, y }: Plot, box: Box): Edges {
  const down = ticksOf(kit, y, mostTicks);
  const figures = Math.max(0, ...down.map(({ label = '' }) => widthOf(kit, label)));
  const left = Math.min(box.width / 3, figures + tickLength + labelGap);
  const ends = ticksOf(kit, x, mostTicks).filter(({ label }) => label !== undefined);
  const lastWidth = Math.max(0, ...ends.map(({ label = '' }) => widthOf(kit, label)));
  const top = 2 * pitch + 1.6;
  const foot = 2 * pitch + tickLength + 0.4;
  const area = {
    x: box.x + left,
    y: box.y + top,
    width: box.width - left - lastWidth / 2,
    height: box.height - top - foot,
  };
  const across = withoutMeeting(ticksOf(kit, x, mostTicks), (tick) => {
    const at = placeAt(x, tick.value, area.x, area.width);
    const half = widthOf(kit, tick.label ?? '') / 2;
    return [at - half, at + half];
  });
  const upright = withoutMeeting(down, (tick) => {
    const at = yOf(y, tick.value, area);
    return [at - 0.5, at + 0.5];
  });
  return { area, across, down: upright };
}

function xOf(axis: Axis, value: number, area: Box): PaperMm {
  return placeAt(axis, value, area.x, area.width);
}

/** Upwards, unless the axis grows downwards. */
function yOf(axis: Axis, value: number, area: Box): PaperMm {
  const turned = { ...axis, backwards: !axis.backwards };
  return placeAt(turned, value, area.y, area.height);
}

function drawTicks(kit: Kit, plot: Plot, { area, across, down }: Edges): Item[] {
  const foot = area.y + area.height;
  const base = foot + tickLength + 0.4 + baseline('small') - 0.4;
  return [
    ...across.flatMap(({ value, label }) => {
      const at = xOf(plot.x, value, area);
      const length = label === undefined ? tickLength / 2 : tickLength;
      return [
        line([at, foot], [at, foot + length], solid('thin')),
        ...letter(kit, label ?? '', at, base, { anchor: 'middle' }),
      ];
    }),
    ...down.flatMap(({ value, label }) => {
      const at = yOf(plot.y, value, area);
      const length = label === undefined ? tickLength / 2 : tickLength;
      return [
        line([area.x - length, at], [area.x, at], solid('thin')),
        ...letter(kit, label ?? '', area.x - tickLength - labelGap, at + 0.9, { anchor: 'end' }),
      ];
    }),
  ];
}

const finite = ([x, y]: Point) => Number.isFinite(x) && Number.isFinite(y);
/** Far beyond the area a line is cut by the clip in any case. */
const far: PaperMm = 2000;

/** Lines, cut at the edges of the area, and signs that stand in it. */
function drawSeries(plot: Plot, area: Box): Item[] {
  const at = ([x, y]: Value): Point => [xOf(plot.x, x, area), yOf(plot.y, y, area)];
  const near = ([x, y]: Point): Point => [
    Math.max(area.x - far, Math.min(area.x + far, x)),
    Math.max(area.y - far, Math.min(area.y + far, y)),
  ];
  const lines = plot.lines.map(({ points, stroke }) => ({
    points: points.map(at).filter(finite).map(near),
    stroke,
  }));
  const holds = ([x, y]: Point) =>
    x >= area.x - 0.01 &&
    x <= area.x + area.width + 0.01 &&
    y >= area.y - 0.01 &&
    y <= area.y + area.height + 0.01;
  const signs = plot.points.flatMap(({ sign, points }) =>
    points
      .map(({ at: value, source }) => ({ place: at(value), source }))
      .filter(({ place }) => finite(place) && holds(place))
      .map(({ place, source }) => drawSign(sign, place, source)),
  );
  const reach = signReach;
  const room = {
    x: area.x - reach,
    y: area.y - reach,
    width: area.width + 2 * reach,
    height: area.height + 2 * reach,
  };
  return [
    group(
      'curves',
      lines
        .filter(({ points }) => points.length > 1)
        .map(({ points, stroke }) => polyline(points, stroke)),
      { clip: area },
    ),
    group('readings', signs, { clip: room }),
  ];
}

/** A plot with its title, axes, grid, key and curves in a box. */
export function drawPlot(kit: Kit, plot: Plot, box: Box): Item {
  const edges = edgesOf(kit, plot, box);
  const { area } = edges;
  const titleBase = box.y + box.height - pitch + baseline('small');
  const named = ({ label }: Tick) => label !== undefined;
  return group(
    'plot',
    [
      ...letter(kit, plot.title, box.x, box.y + baseline('small'), {
        face: 'bold',
        widest: box.width,
      }),
      ...drawKey(kit, plot, box.x, box.y + pitch, box.width),
      ...drawGrid(
        area,
        edges.across.filter(named).map(({ value }) => xOf(plot.x, value, area)),
        edges.down.filter(named).map(({ value }) => yOf(plot.y, value, area)),
      ),
      ...drawSeries(plot, area),
      rectangle(area, { stroke: solid('narrow') }),
      ...drawTicks(kit, plot, edges),
      ...letter(kit, plot.xTitle, area.x + area.width, titleBase, {
        anchor: 'end',
        widest: box.width,
      }),
    ],
    { source: plot.source },
  );
}
