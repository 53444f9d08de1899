import type { PaperMm } from '../../../base/units.ts';
import type { Headworks } from '../../../record/headworks.ts';
import { acrossDimension, downDimension } from '../../dimensions/linear.ts';
import { depthFigure, plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter } from '../../letters.ts';
import { chained, solid } from '../../pens.ts';
import { paperLength } from '../../scale.ts';
import { circle, line, polygon, rectangle } from '../../shapes.ts';
import type { Detail } from './detail.ts';
import { detailWordsIn } from './words/languages.ts';

const overhead: PaperMm = 7;
const leftOfPad: PaperMm = 18;
/** Width of the drain on paper, and the arrow that shows which way it falls. */
const channel: PaperMm = 2.4;

interface Pad {
  readonly long: number;
  readonly wide: number;
  readonly drain: number | undefined;
}

function padOf(headworks: Headworks | undefined): Pad | undefined {
  const { padLength, padWidth, drainLength } = headworks ?? {};
  if (padLength === undefined || padWidth === undefined) return undefined;
  return { long: padLength, wide: padWidth, drain: drainLength };
}

function drawDrain(
  kit: Kit,
  { drainLength = 0, drainSlope }: Headworks,
  scale: number,
  x: PaperMm,
  y: PaperMm,
): Item[] {
  const own = detailWordsIn(kit.words.language);
  const end = x + paperLength(drainLength, scale);
  const middle = (x + end) / 2;
  const fall =
    drainSlope === undefined ? '' : own.fall.replace('{slope}', plainFigure(kit, drainSlope, 1));
  const says = [own.drain, fall].filter(Boolean).join(', ');
  const source = 'headworks.drainLength';
  return [
    ...[-channel / 2, channel / 2].map((off) =>
      line([x, y + off], [end, y + off], solid('narrow'), source),
    ),
    line([end, y - channel], [end, y + channel], solid('narrow'), source),
    line([middle - 5, y], [middle + 5, y], solid('thin')),
    polygon([[middle + 5, y], [middle + 2.6, y - 0.8], [middle + 2.6, y + 0.8]], { fill: '#000000' }), // prettier-ignore
    ...letter(kit, says, middle, y - channel / 2 - 1.2, { anchor: 'middle', source }),
    acrossDimension(kit, {
      from: x,
      to: end,
      at: y + 8,
      edge: y + channel,
      says: `${depthFigure(kit, drainLength)} m`,
      source,
    }),
  ];
}

/** The pad with the casing in its middle, and the drain led straight from it. */
function drawPad(
  kit: Kit,
  { long, wide }: Pad,
  scale: number,
  casingMm: number,
  x: PaperMm,
  y: PaperMm,
): Item[] {
  const [width, height] = [paperLength(long, scale), paperLength(wide, scale)];
  const centre = [x + width / 2, y + height / 2] as const;
  const metres = (value: number) => `${depthFigure(kit, value)} m`;
  return [
    rectangle({ x, y, width, height }, { stroke: solid('medium'), source: 'headworks' }),
    line([x - 1, centre[1]], [x + width + 1, centre[1]], chained('hair')),
    line([centre[0], y - 1], [centre[0], y + height + 1], chained('hair')),
    circle(centre, Math.max(paperLength(casingMm / 1000, scale) / 2, 0.6), {
      stroke: solid('narrow'),
      source: 'strings',
    }),
    acrossDimension(kit, {
      from: x,
      to: x + width,
      at: y - 4,
      edge: y - 0.5,
      says: metres(long),
      source: 'headworks.padLength',
    }),
    downDimension(kit, {
      from: y,
      to: y + height,
      at: x - 4,
      edge: x - 0.5,
      says: metres(wide),
      source: 'headworks.padWidth',
    }),
  ];
}

/** Pad and drain from above, the drain at its true length; undefined where no pad is known. */
export function padDetail(
  kit: Kit,
  headworks: Headworks | undefined,
  casingMm: number,
  width: PaperMm,
): Detail | undefined {
  const pad = padOf(headworks);
  if (!headworks || !pad) return undefined;
  const whole = pad.long + (pad.drain ?? 0);
  const room = width - leftOfPad - 4;
  const scale = [50, 100, 200, 500].find((one) => paperLength(whole, one) <= room);
  if (scale === undefined) return undefined;
  const { drain } = pad;
  const height = Math.max(paperLength(pad.wide, scale), drain === undefined ? 0 : 20) + overhead;
  return {
    name: 'padDetail',
    title: detailWordsIn(kit.words.language).headPlan,
    bar: { scale, unit: 'm' },
    width,
    height: height + 1,
    draw: (x, y) => {
      const left = x + leftOfPad;
      const top = y + overhead;
      const right = left + paperLength(pad.long, scale);
      return [
        ...drawPad(kit, pad, scale, casingMm, left, top),
        ...(drain === undefined
          ? []
          : drawDrain(kit, headworks, scale, right, top + paperLength(pad.wide, scale) / 2)),
      ];
    },
  };
}
