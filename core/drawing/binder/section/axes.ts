import type { PaperMm } from '../../../base/units.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import { letter } from '../../letters.ts';
import { ticksOf } from '../../parts/plots/axis.ts';
import { letterings, solid } from '../../pens.ts';
import { group, line, polyline } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { xAt, yAt, type SectionFrame } from './frame.ts';
import type { SectionLine, StandingWell } from './sectionLine.ts';

/** Room at the left for the figures of the axis, and at the foot for the line. */
export const axisWidth: PaperMm = 14;
export const lineHeightBelow: PaperMm = 16;

/** Elevations, or depths where none is known, at the left edge; no line runs from well to well. */
export function drawElevations(kit: BinderKit, frame: SectionFrame, { flat }: SectionLine): Item {
  const { box, topM, downScale } = frame;
  const footM = topM - (box.height * downScale) / 1000;
  const axis = { kind: 'linear', from: footM, to: topM } as const;
  const x = box.x - 1;
  const ticks = ticksOf(kit, axis, 12).flatMap(({ value, label }): Item[] => {
    const y = yAt(frame, value);
    const says = flat ? plainFigure(kit, Math.abs(value), 6) : (label ?? '');
    return [
      line([x - 1.4, y], [x, y], solid('thin')),
      ...letter(kit, says, x - 2, y + letterings.small / 2, { anchor: 'end' }),
    ];
  });
  const { heads } = kit.own.section;
  const title = flat ? heads.depth : heads.elevation;
  return group('elevations', [
    line([x, box.y], [x, box.y + box.height], solid('narrow')),
    ...ticks,
    ...letter(kit, title, box.x - axisWidth, box.y - 4),
  ]);
}

function distance(kit: BinderKit, metres: number): string {
  return metres < 1000
    ? `${plainFigure(kit, metres, 0)} m`
    : `${plainFigure(kit, metres / 1000, 2)} km`;
}

/** True distances under the columns: a thin line leads from each to its place on the line. */
export function drawDistances(
  kit: BinderKit,
  frame: SectionFrame,
  wells: readonly StandingWell[],
): Item {
  const { box, middles } = frame;
  const foot = box.y + box.height;
  const y = foot + 9;
  const places = wells.map(({ alongM }) => xAt(frame, alongM));
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const along = wells.map(({ alongM }) => alongM);
  const ends = [
    { x: first, says: distance(kit, Math.min(...along)), anchor: 'start' as const },
    { x: last, says: distance(kit, Math.max(...along)), anchor: 'end' as const },
  ];
  // Wells on one spot have one end to write.
  const shown = last - first < 30 ? ends.slice(1) : ends;
  return group('distances', [
    line([first, y], [last, y], solid('narrow')),
    ...places.flatMap((x, at): Item[] => [
      polyline(
        [
          [middles[at]!, foot + 1],
          [middles[at]!, foot + 3],
          [x, y - 1.6],
          [x, y + 1.6],
        ],
        solid('hair'),
      ),
    ]),
    ...shown
      .map(({ x, says, anchor }) =>
        letter(kit, says, anchor === 'end' ? Math.max(x, box.x + 16) : x, y + 4.6, { anchor }),
      )
      .flat(),
  ]);
}
