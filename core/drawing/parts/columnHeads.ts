import type { PaperMm } from '../../base/units.ts';
import type { Item, Span } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter, widthOf, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, line } from '../shapes.ts';
import { columnNames, type ColumnName } from './columnNames.ts';
import { headHeight, middleOf, type View } from './columns.ts';
import { drawGrainLetters } from './log/grain.ts';
import { drawRateScale, type RateStep } from './log/rate.ts';

/** What stands under a column's title: its unit, or the scales. */
function under(kit: Kit, name: ColumnName, { axis, widthScale }: View): string | undefined {
  const { columnUnits, diameter } = kit.words;
  if (name === 'depth' || name === 'rate' || name === 'sieve') return columnUnits[name];
  if (name !== 'section') return undefined;
  const depths = `1:${axis.scale}`;
  return `${depths}, ${diameter} ${widthScale === undefined ? '?' : `1:${widthScale}`}`;
}

/** What stands in a head under its words, over the column: a scale of its own. */
function scaleOf(
  kit: Kit,
  name: ColumnName,
  rates: readonly RateStep[],
  view: View,
  top: PaperMm,
): Item[] {
  const span = view.columns[name];
  if (name === 'grain') return drawGrainLetters(kit, span, top + lineHeight('small') + 0.3);
  return name === 'rate' ? drawRateScale(kit, rates, span, view.body.y - 0.8) : [];
}

/** A title too long for its column, turned to be read from below. */
function turnedTitle(kit: Kit, title: string, span: Span, top: PaperMm): Item[] {
  const most = headHeight - 1;
  const face = widthOf(kit, title, { face: 'bold' }) <= most ? 'bold' : 'regular';
  const x = middleOf(span) + baseline('small') - lineHeight('small') / 2;
  const y = top + headHeight / 2;
  return letter(kit, title, x, y, { anchor: 'middle', face, turn: -90, widest: most });
}

function head(
  kit: Kit,
  name: ColumnName,
  rates: readonly RateStep[],
  view: View,
  top: PaperMm,
): Item[] {
  const span = view.columns[name];
  const room = span.width - 0.6;
  const title = kit.words.columns[name];
  const longest = title.split(' ').map((word) => widthOf(kit, word, { face: 'bold' }));
  if (Math.max(...longest) > room) return turnedTitle(kit, title, span, top);
  const unit = under(kit, name, view);
  const titles = wrapped(kit, title, room, { face: 'bold' });
  const lines = [...titles, ...(unit ? wrapped(kit, unit, room) : [])];
  const pitch = lineHeight('small');
  const scaled = name === 'rate' || name === 'grain';
  const start = top + (scaled ? 0.3 : (headHeight - lines.length * pitch) / 2);
  const words = lines.flatMap((text, at) =>
    letter(kit, text, middleOf(span), start + at * pitch + baseline('small'), {
      anchor: 'middle',
      face: at < titles.length ? 'bold' : 'regular',
    }),
  );
  return [...words, ...scaleOf(kit, name, rates, view, top)];
}

/** Column heads and the rules between columns, over the whole height of the body. */
export function drawColumns(kit: Kit, rates: readonly RateStep[], view: View): Item {
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
    ...shown.flatMap((name) => head(kit, name, rates, view, top)),
  ]);
}
