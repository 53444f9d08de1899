import type { Segment, TextItem } from '../../core/drawing/items.ts';
import { lettersHigh, widthByFont } from './measure.ts';
import { edgesOf, type Extent, type Placed } from './placed.ts';

function pointsOf(segments: readonly Segment[]): (readonly [number, number])[] {
  return segments.flatMap(([, ...numbers]) =>
    numbers.flatMap((x, at) => (at % 2 === 0 ? [[x, numbers[at + 1]!] as const] : [])),
  );
}

/** The box of a text's letters: capitals above the baseline, tails below it. */
export function boxOfText({ x, y, text, face, em, turn = 0 }: TextItem): Extent {
  const width = widthByFont(face, text, em);
  const { above, below } = lettersHigh(em);
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const corners = [0, width].flatMap((along) =>
    [-above, below].map((down) => [x + along * cos - down * sin, y + along * sin + down * cos]),
  ) as (readonly [number, number])[];
  return extentOfPoints(corners);
}

function extentOfPoints(points: readonly (readonly [number, number])[]): Extent {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** How far an item reaches without regard to its clip; curves by their control points. */
export function extentOf(item: Placed['item']): Extent {
  if (item.kind === 'text') return boxOfText(item);
  if (item.kind === 'link') return edgesOf(item.box);
  if (item.kind === 'image') return edgesOf(item);
  return extentOfPoints(pointsOf(item.segments));
}
