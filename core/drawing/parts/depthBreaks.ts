import type { PaperMm } from '../../base/units.ts';
import type { Item, Span } from '../items.ts';
import { plainFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { letter, widthOf } from '../letters.ts';
import { letterings, solid, white } from '../pens.ts';
import { yAt, type DepthRange } from '../scale.ts';
import { group, polygon, polyline, type Point } from '../shapes.ts';
import { columnNames, type ColumnName } from './columnNames.ts';
import type { View } from './columns.ts';

/** Columns of words: what stands in them is no part of the axis, and is not broken. */
const wordColumns: readonly ColumnName[] = [
  'description',
  'colour',
  'moisture',
  'sieve',
  'casing',
  'fill',
];

/** Half the height of a zigzag, and the length of one of its teeth. */
const swing: PaperMm = 0.8;
const tooth: PaperMm = 1.9;

/** The columns that are true to scale, neighbours taken together. */
function scaledSpans({ columns }: View): Span[] {
  const spans: Span[] = [];
  for (const name of columnNames) {
    const { x, width } = columns[name];
    if (wordColumns.includes(name) || width === 0) continue;
    const last = spans.at(-1);
    const joins = last !== undefined && Math.abs(last.x + last.width - x) < 1e-6;
    if (joins) spans[spans.length - 1] = { x: last.x, width: last.width + width };
    else spans.push({ x, width });
  }
  return spans;
}

function zigzag({ x, width }: Span, y: PaperMm): Point[] {
  const teeth = Math.max(2, Math.round(width / tooth));
  return Array.from({ length: teeth + 1 }, (_, at): Point => [
    x + (width * at) / teeth,
    y + (at % 2 === 0 ? swing : -swing),
  ]);
}

/** What is left out, in as many words as go in. */
function says(kit: Kit, { fromM, toM }: DepthRange, width: PaperMm): string {
  const figure = (metres: number) => plainFigure(kit, metres, 2);
  const depths = `${figure(fromM)}–${figure(toM)} m`;
  const phrases = [`${depths} ${kit.words.notDrawn}`, depths];
  return phrases.find((one) => widthOf(kit, one) <= width - 1) ?? '';
}

/** A clear band between two zigzags, with the depths that are left out. */
function drawBand(kit: Kit, view: View, range: DepthRange, span: Span): Item[] {
  const [top, foot] = [yAt(view.axis, range.fromM), yAt(view.axis, range.toM)];
  const upper = zigzag(span, top + swing);
  const lower = zigzag(span, foot - swing);
  const middle = (top + foot) / 2 + letterings.small / 2;
  return [
    polygon([...upper, ...lower.toReversed()], { fill: white }),
    polyline(upper, solid('narrow')),
    polyline(lower, solid('narrow')),
    ...letter(kit, says(kit, range, span.width), span.x + span.width / 2, middle, {
      anchor: 'middle',
    }),
  ];
}

/** The marks of depths that the page leaves out, over all that is drawn to scale. */
export function drawDepthBreaks(kit: Kit, view: View): Item {
  const { leftOut = [] } = view.axis;
  return group(
    'depthBreaks',
    leftOut.map((range) =>
      group(
        'depthBreak',
        scaledSpans(view).flatMap((span) => drawBand(kit, view, range, span)),
      ),
    ),
  );
}
