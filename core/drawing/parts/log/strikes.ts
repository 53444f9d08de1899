import type { PaperMm } from '../../../base/units.ts';
import type { StrikeModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { spread } from '../../labels/spread.ts';
import { letter } from '../../letters.ts';
import { black, letterings, solid } from '../../pens.ts';
import { shownPart, shows, yAt } from '../../scale.ts';
import { group, line, polygon, type Point } from '../../shapes.ts';
import { figureRoom, type View } from '../columns.ts';

/** Rises, a number and an arrow. */
export const strikesWidths = { least: 7.4, wanted: 7.7 } as const;

/** A strike: an arrow that points at the ground. */
export function strikeSign([x, y]: Point, length: number, source?: string): Item[] {
  return [
    line([x - length, y], [x - 1.4, y], solid('medium'), source),
    polygon(
      [
        [x, y],
        [x - 1.8, y - 0.7],
        [x - 1.8, y + 0.7],
      ],
      { fill: black, source },
    ),
  ];
}

/** The rise to the level that the water came to; its head only where the page shows that level. */
function riseSign(x: PaperMm, from: PaperMm, to: PaperMm, ends: boolean, source: string): Item[] {
  const up = to < from ? 1 : -1;
  if (!ends) return [line([x, from], [x, to], solid('thin'), source)];
  return [
    line([x, from], [x, to + up * 1.2], solid('thin'), source),
    polygon(
      [
        [x, to],
        [x - 0.5, to + up * 1.4],
        [x + 0.5, to + up * 1.4],
      ],
      { fill: black, source },
    ),
    line([x - 0.6, to], [x + 0.6, to], solid('thin'), source),
  ];
}

/** Room of a number with a little air, so that two of them can be told apart. */
const numberHeight: PaperMm = letterings.small * 1.4;

/** Where the middles of the strikes' numbers stand: at their arrows, apart where those are near. */
function numberMiddles(strikes: readonly StrikeModel[], view: View): Map<StrikeModel, PaperMm> {
  const shown = strikes
    .filter(({ depthM }) => shows(view.axis, depthM, view.first))
    .sort((a, b) => a.depthM - b.depthM);
  const wanted = shown.map(({ depthM }) => yAt(view.axis, depthM));
  const { top, foot } = figureRoom(view);
  const tops = spread(
    wanted.map((middle) => ({ middle, height: numberHeight })),
    top - numberHeight / 2,
    foot + numberHeight / 2,
  );
  return new Map(shown.map((one, at) => [one, (tops?.[at] ?? wanted[at]!) + numberHeight / 2]));
}

/**
 * A strike with its number and its rise. Rises stand in turn on two lines, since those of
 * neighbouring strikes end at about the same level and would hide each other.
 */
function drawStrike(
  kit: Kit,
  strike: StrikeModel,
  number: number,
  numberY: PaperMm,
  view: View,
): Item[] {
  const { x, width } = view.columns.strikes;
  const { depthM, riseM, path } = strike;
  const right = x + width;
  const seen = shows(view.axis, depthM, view.first);
  const y = yAt(view.axis, depthM);
  const arrow = seen
    ? [
        ...strikeSign([right - 0.5, y], 2.6, path),
        ...letter(kit, String(number), right - 3.5, numberY + letterings.small / 2, {
          anchor: 'end',
          source: path,
        }),
      ]
    : [];
  const range = riseM === undefined ? undefined : shownPart(view.axis, riseM, depthM);
  const rise = range
    ? riseSign(
        x + 0.9 + ((number - 1) % 2) * 1,
        yAt(view.axis, range.toM),
        yAt(view.axis, range.fromM),
        range.fromM === riseM,
        path,
      )
    : [];
  return arrow.length + rise.length > 0
    ? [group('strike', [...arrow, ...rise], { source: path })]
    : [];
}

/** Strikes as numbered arrows at the log's edge, with the rise to their rest level. */
export function drawStrikes(kit: Kit, strikes: readonly StrikeModel[], view: View): Item {
  const middles = numberMiddles(strikes, view);
  return group(
    'waterColumn',
    strikes.flatMap((one, at) => drawStrike(kit, one, at + 1, middles.get(one) ?? 0, view)),
  );
}
