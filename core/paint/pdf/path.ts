import type { PathItem, Segment, Stroke } from '../../drawing/items.ts';
import type { Content } from './content.ts';
import { fillOperator, strokeOperator } from './numbers.ts';

const caps = { butt: '0 J', round: '1 J', square: '2 J' } as const;
const joins = { miter: '0 j', round: '1 j', bevel: '2 j' } as const;

function stepOf(content: Content, segment: Segment): string {
  switch (segment[0]) {
    case 'M':
      return `${content.place(segment[1], segment[2])} m`;
    case 'L':
      return `${content.place(segment[1], segment[2])} l`;
    case 'C': {
      const [, ax, ay, bx, by, x, y] = segment;
      return `${content.place(ax, ay)} ${content.place(bx, by)} ${content.place(x, y)} c`;
    }
    case 'Z':
      return 'h';
  }
}

/** Lays an outline down, to be filled, stroked or clipped by what follows. */
export function layOutline(content: Content, segments: readonly Segment[]): void {
  for (const segment of segments) content.write(stepOf(content, segment));
}

export function setFill(content: Content, ink: string): void {
  content.set('fill', fillOperator(ink));
}

/** Sets all of the pen, so that nothing of an earlier stroke shows. */
function setStroke(content: Content, { ink, width, dash = [], cap, join }: Stroke): void {
  content.set('stroke', strokeOperator(ink));
  content.set('width', `${content.length(width)} w`);
  content.set('dash', `[${dash.map((one) => content.length(one)).join(' ')}] 0 d`);
  content.set('cap', caps[cap ?? 'butt']);
  content.set('join', joins[join ?? 'miter']);
}

export function paintPath(content: Content, { segments, stroke, fill }: PathItem): void {
  if (!segments.length || (!stroke && !fill)) return;
  if (stroke) setStroke(content, stroke);
  if (fill) setFill(content, fill);
  layOutline(content, segments);
  if (stroke && fill) content.write('B');
  else content.write(fill ? 'f' : 'S');
}
