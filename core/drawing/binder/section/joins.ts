import type { Item } from '../../items.ts';
import { dashed } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import type { JoinedDepths } from '../binder.ts';
import { columnWidth, yAt, type SectionFrame } from './frame.ts';
import type { StandingWell } from './sectionLine.ts';

type Drawn = Extract<Item, { kind: 'group' }>;

/** The lines that a person asked for between neighbours; others would run through a well. */
export function drawJoins(
  frame: SectionFrame,
  wells: readonly StandingWell[],
  joins: readonly JoinedDepths[],
): Drawn {
  const places = new Map(wells.map(({ well }, at) => [well.id, at]));
  const lines = joins.flatMap(({ from, to }): Item[] => {
    const [one, other] = [places.get(from.wellId), places.get(to.wellId)];
    if (one === undefined || other === undefined || Math.abs(one - other) !== 1) return [];
    const end = (at: number, depthM: number, way: number) =>
      [
        frame.middles[at]! + (way * columnWidth) / 2,
        yAt(frame, wells[at]!.groundM - depthM),
      ] as const;
    const way = Math.sign(frame.middles[other]! - frame.middles[one]!);
    return [line(end(one, from.depthM, way), end(other, to.depthM, -way), dashed('narrow'))];
  });
  return group('joins', lines);
}
