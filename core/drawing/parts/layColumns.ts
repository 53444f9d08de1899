import type { PaperMm } from '../../base/units.ts';
import type { Span } from '../items.ts';
import { columnNames, type ColumnName } from './columnNames.ts';

export type Columns = Readonly<Record<ColumnName, Span>>;

/** What a column asks for: it is never narrower than `least`, and `wanted` holds all it shows. */
export interface AskedWidth {
  readonly least: PaperMm;
  readonly wanted: PaperMm;
}

/** Columns that are absent are not shown. */
export type AskedWidths = Readonly<Partial<Record<ColumnName, AskedWidth>>>;

/** Widths that let log and section be read well; all least widths together fit an upright A4. */
export const usualWidths = {
  depth: { least: 8.6, wanted: 9 },
  ground: { least: 9.9, wanted: 14 },
  description: { least: 25.6, wanted: 50 },
  casing: { least: 21.1, wanted: 26 },
  section: { least: 28.2, wanted: 37 },
  fill: { least: 20, wanted: 25 },
} as const satisfies AskedWidths;

/** Who takes what others leave, one after the other. */
const lastTakers: readonly ColumnName[] = ['casing', 'fill', 'section'];

/** Gives each of some columns what it lacks for a width, as far as something is left. */
function grown(
  widths: Map<ColumnName, PaperMm>,
  wanted: readonly (readonly [ColumnName, PaperMm])[],
  spare: PaperMm,
): PaperMm {
  let left = spare;
  for (const [name, width] of wanted) {
    const has = widths.get(name);
    if (has === undefined) continue;
    const more = Math.max(0, Math.min(width - has, left));
    widths.set(name, has + more);
    left -= more;
  }
  return left;
}

/**
 * Lays columns over a width. Each has at least its least; then all but the description come to
 * what they want, then the description, then the words beside the section (`calls`), and what is
 * left goes to the description; without one, to section and words beside it.
 */
export function layColumns(
  x: PaperMm,
  width: PaperMm,
  asked: AskedWidths,
  calls: Readonly<Partial<Record<'casing' | 'fill', PaperMm>>> = {},
): Columns {
  const shown = columnNames.flatMap((name) => (asked[name] ? [[name, asked[name]] as const] : []));
  const widths = new Map(shown.map(([name, { least }]) => [name, least]));
  const sum = () => [...widths.values()].reduce((all, one) => all + one, 0);
  const wanted = shown.map(([name, one]) => [name, one.wanted] as const);
  const words = wanted.filter(([name]) => name === 'description');
  const others = wanted.filter(([name]) => name !== 'description');
  const besides = [['casing', calls.casing ?? 0] as const, ['fill', calls.fill ?? 0] as const];
  const left = grown(widths, [...others, ...words, ...besides], width - sum());
  const takers = widths.has('description') ? ['description' as const] : lastTakers;
  for (const taker of takers) widths.set(taker, (widths.get(taker) ?? 0) + left / takers.length);
  let at = x;
  const spans = columnNames.map((name) => {
    const span = { x: at, width: widths.get(name) ?? 0 };
    at += span.width;
    return [name, span] as const;
  });
  return Object.fromEntries(spans) as Record<ColumnName, Span>;
}
