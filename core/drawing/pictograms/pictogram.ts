import around from '../../../assets/pictograms/around.json' with { type: 'json' };
import care from '../../../assets/pictograms/care.json' with { type: 'json' };
import heads from '../../../assets/pictograms/heads.json' with { type: 'json' };
import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { GroupItem, PathItem, Segment, Stroke } from '../items.ts';
import { black, white } from '../pens.ts';
import { circle, group } from '../shapes.ts';
import { readOutline } from './outline.ts';

const drawings = { ...around, ...care, ...heads };

export type PictogramId = keyof typeof drawings;
export const pictogramIds = Object.keys(drawings) as PictogramId[];

/**
 * One mark of a pictogram on a grid of 32 by 32: a line, a thick line, a body in black, one in
 * white with its outline, or a circle or disc by centre and radius.
 */
interface Mark {
  readonly line?: string;
  readonly thick?: string;
  readonly black?: string;
  readonly white?: string;
  readonly ring?: readonly number[];
  readonly disc?: readonly number[];
}

const grid = 32;
/** Of a line and of a thick line, in units of the grid. */
const lineUnits = 1.7;
const thickUnits = 3;
/** Of the bar over what is forbidden, and of the white on either side of it together. */
const barUnits = 2.6;
const edgeUnits = 4.8;

export interface PictogramPlace {
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly side: PaperMm;
  readonly source?: RecordPath | undefined;
}

function roundStroke(width: PaperMm): Stroke {
  return { ink: black, width, cap: 'round', join: 'round' };
}

function placed(segments: readonly Segment[], { x, y, side }: PictogramPlace): Segment[] {
  const k = side / grid;
  return segments.map(([verb, ...numbers]) => {
    const moved = numbers.map((one, at) => (at % 2 === 0 ? x : y) + one * k);
    return [verb, ...moved] as unknown as Segment;
  });
}

function drawMark(mark: Mark, place: PictogramPlace): PathItem {
  const k = place.side / grid;
  const stroke = roundStroke((mark.thick === undefined ? lineUnits : thickUnits) * k);
  const round = mark.ring ?? mark.disc;
  if (round) {
    const [cx = 0, cy = 0, r = 0] = round;
    const centre = [place.x + cx * k, place.y + cy * k] as const;
    return circle(centre, r * k, mark.ring ? { stroke, fill: white } : { fill: black });
  }
  const outline = mark.line ?? mark.thick ?? mark.black ?? mark.white ?? '';
  const segments = placed(readOutline(outline), place);
  const fill = mark.black !== undefined ? black : mark.white !== undefined ? white : undefined;
  return { kind: 'path', segments, stroke, ...(fill && { fill }) };
}

/** A pictogram in a square, by its upper left corner. */
export function drawPictogram(id: PictogramId, place: PictogramPlace): GroupItem {
  const marks: readonly Mark[] = drawings[id];
  const items = marks.map((mark) => drawMark(mark, place));
  return group('pictogram', items, { source: place.source });
}

/** The same as a thing that is forbidden: a bar from corner to corner, edged with white. */
export function drawForbidden(id: PictogramId, place: PictogramPlace): GroupItem {
  const { x, y, side } = place;
  const k = side / grid;
  const bar = placed(readOutline('M4 4 L28 28'), { x, y, side });
  const edge: Stroke = { ...roundStroke(edgeUnits * k), ink: white };
  return group('forbidden', [
    drawPictogram(id, place),
    { kind: 'path', segments: bar, stroke: edge },
    { kind: 'path', segments: bar, stroke: roundStroke(barUnits * k) },
  ]);
}
