import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import { plainFigure } from '../../figures.ts';
import type { Box, Item } from '../../items.ts';
import { baseline, letter, wrapped, lettered } from '../../letters.ts';
import { black, dashed, lineHeight, solid, white } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderWell, Outcome } from '../binderWell.ts';

const outcomes: readonly Outcome[] = ['water', 'dry', 'open'];

/** Wells of one year or one material. */
export interface OutcomeRow {
  readonly says: string;
  readonly counts: Readonly<Record<Outcome, number>>;
}

export function outcomeRow(says: string, wells: readonly BinderWell[]): OutcomeRow {
  const count = (outcome: Outcome) => wells.filter((well) => well.outcome === outcome).length;
  return { says, counts: { water: count('water'), dry: count('dry'), open: count('open') } };
}

const sumOf = ({ counts }: OutcomeRow) => counts.water + counts.dry + counts.open;

/** Told apart by black, white and a dashed edge, not by colour. */
function drawOutcome(outcome: Outcome, box: Box): Item {
  if (outcome === 'open') {
    const stroke = { ...dashed('thin'), dash: [0.9, 0.6] };
    return rectangle(box, { stroke, fill: white });
  }
  return rectangle(box, { stroke: solid('narrow'), fill: outcome === 'water' ? black : white });
}

const barHeight: PaperMm = 2.6;

/** What the bars stand for. */
export function outcomeKeyPiece(kit: BinderKit): Piece {
  return {
    height: lineHeight('normal') + 2,
    keeps: true,
    draw: (x, y) =>
      outcomes.flatMap((outcome, at) => {
        const left = x + at * 56;
        return [
          drawOutcome(outcome, { x: left, y: y + 0.8, width: 6, height: barHeight }),
          ...letter(kit, kit.own.plots.outcomes[outcome], left + 7.5, y + baseline('small') + 0.6, {
            widest: 47,
          }),
        ];
      }),
  };
}

/** Counts in words; the share stands beside the counts that it is made of, never alone. */
function saysOf({ own, ...kit }: BinderKit, { counts }: OutcomeRow): string {
  const { water, dry, open } = counts;
  const decided = water + dry;
  const values = { water: String(water), decided: String(decided), open: String(open) };
  const parts = [
    ...(decided === 0
      ? []
      : [
          filled(own.plots.share, {
            ...values,
            share: plainFigure({ ...kit }, (100 * water) / decided, 0),
          }),
        ]),
    ...(open === 0 ? [] : [filled(own.plots.openCount, values)]),
  ];
  return parts.join('; ');
}

/** A row of name, bar and counts; the longest bar takes all the room of bars. */
export function outcomePieces(
  kit: BinderKit,
  rows: readonly OutcomeRow[],
  width: PaperMm,
): Piece[] {
  const most = rows.reduce((a, row) => Math.max(a, sumOf(row)), 1);
  const [nameWidth, saysWidth] = [width * 0.22, width * 0.3];
  const barWidth = width - nameWidth - saysWidth - 4;
  return rows.map((row) => {
    const name = wrapped(kit, row.says, nameWidth - 2);
    const height = Math.max(1, name.length) * lineHeight('small') + 1.3;
    return {
      height,
      draw: (x, y) => {
        let left = x + nameWidth;
        const bars = outcomes.flatMap((outcome): Item[] => {
          const long = (row.counts[outcome] / most) * barWidth;
          const box = { x: left, y: y + 0.3, width: long, height: barHeight };
          left += long;
          return long === 0 ? [] : [drawOutcome(outcome, box)];
        });
        const says = x + width - saysWidth;
        return [
          group('outcomes', [
            ...lettered(kit, name, x, y),
            ...bars,
            line([x + nameWidth, y], [x + nameWidth, y + height], solid('thin')),
            ...letter(kit, saysOf(kit, row), says, y + baseline('small'), { widest: saysWidth }),
          ]),
        ];
      },
    };
  });
}
