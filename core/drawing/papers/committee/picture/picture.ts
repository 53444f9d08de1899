import type { WellModel } from '../../../../model/wellModel.ts';
import type { Headworks } from '../../../../record/headworks.ts';
import type { WellRecord } from '../../../../record/schema.ts';
import type { Box, Item } from '../../../items.ts';
import { black, white } from '../../../pens.ts';
import { group, line, rectangle } from '../../../shapes.ts';
import type { CommitteeKit } from '../committeeKit.ts';
import type { WellFacts } from '../facts.ts';
import { closedState } from '../stages.ts';
import { pictureFrame, halfHole, pen, type PictureFrame } from './frame.ts';
import { drawGround } from './ground.ts';
import { drawHole } from './hole.ts';
import { drawLabels } from './labels.ts';
import { drawPump } from './pump.ts';

/** Whether the record tells of a pad. */
function hasPad({ padLength, padWidth, padThickness }: Headworks): boolean {
  return [padLength, padWidth, padThickness].some((one) => one !== undefined);
}

/** A hole that was filled again, under a slab that nobody lifts. */
function drawClosed({ middle, ground, foot }: PictureFrame): Item {
  const left = middle - halfHole;
  const strokes = Array.from({ length: Math.floor((foot - ground - 10) / 4) }, (_, at) => {
    const y = ground + 14 + at * 4;
    return line([left + 1.5, y], [middle + halfHole - 1.5, y - 4], pen(0.5));
  });
  return group('closed', [
    rectangle(
      { x: left, y: ground, width: 2 * halfHole, height: foot - ground },
      {
        stroke: pen(0.7),
        fill: white,
      },
    ),
    ...strokes.filter((_, at) => ground + 14 + at * 4 < foot),
    rectangle({ x: left, y: ground, width: 2 * halfHole, height: 8 }, { fill: black }),
    rectangle(
      { x: left - 5, y: ground - 2.6, width: 2 * halfHole + 10, height: 2.6 },
      {
        stroke: pen(0.7),
        fill: white,
      },
    ),
  ]);
}

/** The well as its users may picture it: pump, pad and drain above the ground, pipe and water below. */
export function drawPicture(
  kit: CommitteeKit,
  record: WellRecord,
  model: WellModel,
  facts: WellFacts,
  box: Box,
): Item {
  const frame = pictureFrame(model, facts, box);
  const closed = closedState(record) !== undefined;
  const { depth } = facts;
  const built = record.headworks ?? {};
  return group('picture', [
    drawGround(frame, closed ? {} : built),
    ...(closed
      ? [drawClosed(frame)]
      : [drawHole(frame, model, facts), drawPump(frame, facts, hasPad(built))]),
    ...drawLabels(kit, model, closed ? { ...(depth && { depth }) } : facts, frame),
  ]);
}
