import type { PaperMm } from '../../base/units.ts';
import type { Box, Item, Span } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { axisBottom, type DepthAxis } from '../scale.ts';
import { group, line } from '../shapes.ts';

export const columnNames = [
  'depth',
  'water',
  'ground',
  'description',
  'rate',
  'casing',
  'section',
  'fill',
] as const;

export type ColumnName = (typeof columnNames)[number];
export type Columns = Readonly<Record<ColumnName, Span>>;

/** The part of a well that one page shows, and where. */
export interface View {
  readonly axis: DepthAxis;
  readonly columns: Columns;
  /** Room for everything beside the axis; the axis lies within it. */
  readonly body: Box;
  /** Scale of diameters; absent where no diameter is known. */
  readonly widthScale?: number;
  readonly first: boolean;
  readonly last: boolean;
}

/** Widths on A4; the description and the two columns of callouts share what A3 has more. */
const widths: Readonly<Record<ColumnName, PaperMm>> = {
  depth: 9,
  water: 9,
  ground: 14,
  description: 50,
  rate: 10,
  casing: 26,
  section: 37,
  fill: 25,
};

const growing: readonly ColumnName[] = ['description', 'casing', 'fill'];

/** Lays the columns over a width; without drilling rates their column goes to the description. */
export function layColumns(x: PaperMm, width: PaperMm, hasRate: boolean): Columns {
  const spare = width - columnNames.reduce((sum, name) => sum + widths[name], 0);
  const rate = hasRate ? widths.rate : 0;
  let at = x;
  const spans = columnNames.map((name) => {
    const grown = growing.includes(name) ? spare / growing.length : 0;
    const freed = name === 'description' ? widths.rate - rate : 0;
    const span = { x: at, width: name === 'rate' ? rate : widths[name] + grown + freed };
    at += span.width;
    return [name, span] as const;
  });
  return Object.fromEntries(spans) as Record<ColumnName, Span>;
}

/** Between which heights words may stand: not beyond a match line. */
export function wordsRoom({ axis, body, first, last }: View): { top: PaperMm; foot: PaperMm } {
  return {
    top: first ? body.y + 0.3 : axis.top,
    foot: last ? body.y + body.height - 0.3 : axisBottom(axis),
  };
}

export function middleOf({ x, width }: Span): PaperMm {
  return x + width / 2;
}

export const headHeight = 9.5;

/** What stands under a column's title: its unit, or the scales. */
function under(kit: Kit, name: ColumnName, { axis, widthScale }: View): string | undefined {
  const { columnUnits, diameter } = kit.words;
  if (name === 'depth' || name === 'rate') return columnUnits[name];
  if (name !== 'section') return undefined;
  const depths = `1:${axis.scale}`;
  return `${depths}, ${diameter} ${widthScale === undefined ? '?' : `1:${widthScale}`}`;
}

function head(kit: Kit, name: ColumnName, view: View, top: PaperMm): Item[] {
  const { x, width } = view.columns[name];
  const unit = under(kit, name, view);
  const titles = wrapped(kit, kit.words.columns[name], width - 1, { face: 'bold' });
  const lines = [...titles, ...(unit ? [unit] : [])];
  const pitch = lineHeight('small');
  const free = headHeight - lines.length * pitch;
  const start = top + (name === 'rate' ? 0.3 : free / 2);
  return lines.flatMap((text, at) =>
    letter(kit, text, x + width / 2, start + at * pitch + baseline('small'), {
      anchor: 'middle',
      face: at < titles.length ? 'bold' : 'regular',
    }),
  );
}

/** Column heads and the rules between columns, over the whole height of the body. */
export function drawColumns(kit: Kit, view: View): Item {
  const { columns, body } = view;
  const top = body.y - headHeight;
  const foot = body.y + body.height;
  const shown = columnNames.filter((name) => columns[name].width > 0);
  const right = columns.fill.x + columns.fill.width;
  const joined: readonly ColumnName[] = ['section', 'fill'];
  const rules = shown
    .slice(1)
    .map((name) =>
      line(
        [columns[name].x, top],
        [columns[name].x, joined.includes(name) ? body.y : foot],
        solid('thin'),
      ),
    );
  const edges = [body.y, foot].map((y) => line([columns.depth.x, y], [right, y], solid('medium')));
  return group('columns', [
    ...rules,
    ...edges,
    ...shown.flatMap((name) => head(kit, name, view, top)),
  ]);
}
