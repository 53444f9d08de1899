import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import type { DepthAxis } from '../scale.ts';
import { group, line } from '../shapes.ts';

/** A column's place across the page. */
export interface Span {
  readonly x: PaperMm;
  readonly width: PaperMm;
}

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
  depth: 11,
  water: 10,
  ground: 16,
  description: 42,
  rate: 11,
  casing: 28,
  section: 34,
  fill: 28,
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

export function middleOf({ x, width }: Span): PaperMm {
  return x + width / 2;
}

export const headHeight = 10;

function head(kit: Kit, name: ColumnName, { x, width }: Span, top: PaperMm): Item[] {
  const unit = name === 'depth' || name === 'rate' ? kit.words.columnUnits[name] : undefined;
  const titles = wrapped(kit, kit.words.columns[name], width - 1.5, { face: 'bold' });
  const lines = [...titles, ...(unit ? [unit] : [])];
  const height = lineHeight('small');
  const free = headHeight - lines.length * height;
  const start = top + (name === 'rate' ? 0.5 : free / 2);
  return lines.flatMap((text, at) =>
    letter(kit, text, x + width / 2, start + at * height + baseline('small'), {
      anchor: 'middle',
      face: at < titles.length ? 'bold' : 'regular',
    }),
  );
}

/** Column heads and the rules between columns, from the head's top to the body's foot. */
export function drawColumns(kit: Kit, columns: Columns, top: PaperMm, foot: PaperMm): Item {
  const shown = columnNames.filter((name) => columns[name].width > 0);
  const right = columns.fill.x + columns.fill.width;
  const joined: readonly ColumnName[] = ['section', 'fill'];
  const rules = shown
    .slice(1)
    .map((name) =>
      line(
        [columns[name].x, top],
        [columns[name].x, joined.includes(name) ? top + headHeight : foot],
        solid('thin'),
      ),
    );
  const edge = line([columns.depth.x, top + headHeight], [right, top + headHeight], solid('medium'));
  const floor = line([columns.depth.x, foot], [right, foot], solid('medium'));
  const heads = shown.flatMap((name) => head(kit, name, columns[name], top));
  return group('columns', [...rules, edge, floor, ...heads]);
}
