import type { RecordPath } from '../base/recordPath.ts';
import type { PaperMm } from '../base/units.ts';
import type { Box, GroupItem, Ink, Item, PathItem, RegionItem, Segment, Stroke } from './items.ts';

export type Point = readonly [PaperMm, PaperMm];

interface Look {
  readonly stroke?: Stroke;
  readonly fill?: Ink;
  readonly source?: RecordPath | undefined;
}

/** A source as a property only where there is one. */
export function sourced(source: RecordPath | undefined): { source?: RecordPath } {
  return source === undefined ? {} : { source };
}

export function outline(points: readonly Point[], closed = false): Segment[] {
  const steps: Segment[] = points.map(([x, y], at) => [at === 0 ? 'M' : 'L', x, y]);
  return closed ? [...steps, ['Z']] : steps;
}

export function boxOutline({ x, y, width, height }: Box): Segment[] {
  return outline(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    true,
  );
}

function painted(segments: readonly Segment[], { stroke, fill, source }: Look): PathItem {
  return {
    kind: 'path',
    segments,
    ...(stroke && { stroke }),
    ...(fill && { fill }),
    ...sourced(source),
  };
}

export function line(from: Point, to: Point, stroke: Stroke, source?: RecordPath): PathItem {
  return painted(outline([from, to]), { stroke, source });
}

export function polyline(points: readonly Point[], stroke: Stroke, source?: RecordPath): PathItem {
  return painted(outline(points), { stroke, source });
}

export function polygon(points: readonly Point[], look: Look): PathItem {
  return painted(outline(points, true), look);
}

export function rectangle(box: Box, look: Look): PathItem {
  return painted(boxOutline(box), look);
}

/** A circle from four curves; the control distance keeps the radius within 0.03 %. */
export function circle([cx, cy]: Point, r: PaperMm, look: Look): PathItem {
  const k = 0.5523 * r;
  return painted(
    [
      ['M', cx + r, cy],
      ['C', cx + r, cy + k, cx + k, cy + r, cx, cy + r],
      ['C', cx - k, cy + r, cx - r, cy + k, cx - r, cy],
      ['C', cx - r, cy - k, cx - k, cy - r, cx, cy - r],
      ['C', cx + k, cy - r, cx + r, cy - k, cx + r, cy],
      ['Z'],
    ],
    look,
  );
}

export function hatched(
  points: readonly Point[],
  hatch: string,
  source?: RecordPath,
  ground?: Ink,
): RegionItem {
  return {
    kind: 'region',
    segments: outline(points, true),
    hatch,
    ...(ground && { ground }),
    ...sourced(source),
  };
}

export function corners({ x, y, width, height }: Box): Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

export function group(
  name: string,
  items: readonly Item[],
  extra: { clip?: Box; source?: RecordPath | undefined } = {},
): GroupItem {
  return {
    kind: 'group',
    name,
    items,
    ...(extra.clip && { clip: extra.clip }),
    ...sourced(extra.source),
  };
}
