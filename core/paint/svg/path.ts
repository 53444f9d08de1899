import type { PathItem, Segment, Stroke } from '../../drawing/items.ts';
import { mm, mms } from './number.ts';
import { sourceOf, type SvgNode } from './node.ts';

/** Segments as the `d` of a path. */
export function outline(segments: readonly Segment[]): string {
  return segments.map(([letter, ...numbers]) => letter + mms(...numbers)).join('');
}

function strokeAttributes(stroke: Stroke): Record<string, string> {
  const { ink, width, dash, cap, join } = stroke;
  return {
    stroke: ink,
    'stroke-width': mm(width),
    ...(dash?.length ? { 'stroke-dasharray': mms(...dash) } : {}),
    ...(cap ? { 'stroke-linecap': cap } : {}),
    ...(join ? { 'stroke-linejoin': join } : {}),
  };
}

export function pathNode(item: PathItem): SvgNode {
  return {
    name: 'path',
    attributes: {
      ...sourceOf(item),
      d: outline(item.segments),
      fill: item.fill ?? 'none',
      ...(item.stroke ? strokeAttributes(item.stroke) : {}),
    },
  };
}
