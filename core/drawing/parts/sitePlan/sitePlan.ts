import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { PlacedSurrounding, SitingPlan } from '../../../water/results.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter, widthOf } from '../../letters.ts';
import { placeLabels } from '../../map/labels.ts';
import { black, dashed, lineHeight, solid, white } from '../../pens.ts';
import { paperLength } from '../../scale.ts';
import { circle, group, line, polygon, rectangle, type Point } from '../../shapes.ts';
import type { Detail } from '../details/detail.ts';
import { detailWordsIn } from '../details/words/languages.ts';
import { drawList, laidRows, rowsOf, underList } from './list.ts';
import { numberOf, planMarks, type PlanMark } from './marks.ts';
import { ringsOf, usualReach } from './reach.ts';
import { surroundingSign } from './signs.ts';

/** Length on paper of what the plan reaches, and from the well to the plan's edge. */
const edge: PaperMm = 50;
const half: PaperMm = 57;
/** Of the dashed ring round what stands farther. */
const ringRadius: PaperMm = 2.7;
/** Between the middle of a sign and its words. */
const besideSign: PaperMm = 4.6;

/** The reach of every plan on paper makes one of ISO 5455's steps with 50 mm (25 m is 1:500). */
function scaleOf(reachM: number): number {
  return (reachM * 1000) / edge;
}

/** How far the plan's frame reaches from the well; to both sides it is always `half`. */
interface Frame {
  readonly up: PaperMm;
  readonly down: PaperMm;
}

const wholeFrame: Frame = { up: half, down: half };

/** Where the figure of a ring begins, or with `end` ends, from the well. */
interface RingFigure {
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly anchor: 'start' | 'end';
}

/** Under the well, over it where the frame ends before that, or else beside it. */
function ringFigure(radius: PaperMm, { up, down }: Frame): RingFigure {
  if (radius <= down - 1) return { x: 0.8, y: radius - 0.8, anchor: 'start' };
  if (radius <= up - 1) return { x: 0.8, y: 2.6 - radius, anchor: 'start' };
  return { x: radius - 0.8, y: -0.8, anchor: 'end' };
}

function drawGround(kit: Kit, reachM: number, frame: Frame, [x, y]: Point): Item[] {
  const { up, down } = frame;
  const rings = ringsOf(reachM).map((one) => ({
    says: `${plainFigure(kit, one, 1)} m`,
    radius: paperLength(one, scaleOf(reachM)),
  }));
  const clip = { x: x - half, y: y - up, width: 2 * half, height: up + down };
  return [
    rectangle(clip, { stroke: solid('thin') }),
    line([x - edge, y], [x + edge, y], solid('hair')),
    line([x, y - Math.min(edge, up)], [x, y + Math.min(edge, down)], solid('hair')),
    group(
      'rings',
      rings.map(({ radius }) => circle([x, y], radius, { stroke: dashed('hair') })),
      { clip },
    ),
    ...rings.flatMap(({ says, radius }) => {
      const figure = ringFigure(radius, frame);
      return letter(kit, says, x + figure.x, y + figure.y, { anchor: figure.anchor });
    }),
  ];
}

/** An arrow to true north in the corner. */
function drawNorth(kit: Kit, { up }: Frame, [x, y]: Point): Item {
  const [cx, top] = [x + half - 6, y - up + 3];
  const { north } = detailWordsIn(kit.words.language);
  return group('northArrow', [
    polygon([[cx, top], [cx, top + 9], [cx - 2.2, top + 11]], { fill: black }), // prettier-ignore
    polygon([[cx, top], [cx + 2.2, top + 11], [cx, top + 9]], { stroke: solid('thin') }), // prettier-ignore
    ...letter(kit, north, cx, top + 15.4, { lettering: 'large', face: 'bold', anchor: 'middle' }),
  ]);
}

/** Points outward over a mark that stands farther than the plan reaches. */
function arrow({ turn }: PlanMark, x: PaperMm, y: PaperMm): Item {
  const along = (turn * Math.PI) / 180;
  const at = (out: PaperMm, aside: PaperMm): Point => [
    x + out * Math.sin(along) + aside * Math.cos(along),
    y - out * Math.cos(along) + aside * Math.sin(along),
  ];
  return polygon([at(4.8, 0), at(3, 1), at(3, -1)], { fill: black });
}

function drawMark(mark: PlanMark, kind: PlacedSurrounding['kind'], [cx, cy]: Point): Item {
  const [x, y] = [cx + mark.x, cy + mark.y];
  const { path, beyond } = mark;
  const stroke = { ...solid('thin'), dash: [0.8, 0.6] };
  const ring = circle([x, y], ringRadius, { stroke, fill: white });
  return group(
    'surrounding',
    [...(beyond ? [arrow(mark, x, y), ring] : []), ...surroundingSign(kind, [x, y])],
    { source: path },
  );
}

/** The number of a mark in the list, and how far it is from the well. */
interface Label {
  readonly number: string;
  readonly distance: string;
  /** Of both with the gap between. */
  readonly width: PaperMm;
  /** Where the distance begins. */
  readonly then: PaperMm;
}

function labelOf(kit: Kit, path: RecordPath, { distanceM }: PlacedSurrounding): Label {
  const number = String(numberOf(path));
  const distance = `${plainFigure(kit, distanceM, 1)} m`;
  const then = widthOf(kit, number, { face: 'bold' }) + 1.2;
  return { number, distance, then, width: then + widthOf(kit, distance) };
}

function drawLabel(kit: Kit, { number, distance, then, width }: Label, x: PaperMm, y: PaperMm) {
  const height = lineHeight('small');
  return [
    rectangle(
      { x: x - 0.3, y: y + 0.2, width: width + 0.6, height: height - 0.4 },
      { fill: white },
    ),
    ...letter(kit, number, x, y + baseline('small'), { face: 'bold' }),
    ...letter(kit, distance, x + then, y + baseline('small')),
  ];
}

/** Numbers and distances beside the marks, where they find room; the list beside has them all. */
function drawLabels(
  kit: Kit,
  marks: readonly PlanMark[],
  placed: readonly PlacedSurrounding[],
  frame: Frame,
  [x, y]: Point,
): Item[] {
  const { up, down } = frame;
  const labels = marks.map(({ path }, at) => labelOf(kit, path, placed[at]!));
  const height = lineHeight('small');
  const signs = marks.map((mark, at) => ({
    x: mark.x + half,
    y: mark.y + up,
    width: labels[at]!.width,
    height,
  }));
  // The rings' own figures and the well are kept free like marks.
  const figures = ringsOf(1).map((one) => ringFigure(one * edge, frame));
  const kept = [...figures, { x: 0.8, y: 0.8, anchor: 'start' }].map((one) => ({
    x: half + one.x + (one.anchor === 'start' ? 3.2 : -5),
    y: up + one.y - 0.7,
    width: one.anchor === 'start' ? half : 5,
    height,
  }));
  const arrowed = { x: 2 * half - 6, y: 10, width: half, height };
  const room = { width: 2 * half - 1, height: up + down - 1 };
  const places = placeLabels([...kept, arrowed, ...signs], besideSign, room);
  return marks.flatMap(({ path }, at) => {
    const place = places[at + kept.length + 1];
    if (!place) return [];
    const [left, top] = [x - half + place.x, y - up + place.y];
    return [group('label', drawLabel(kit, labels[at]!, left, top), { source: path })];
  });
}

/** The well in the middle: a ring with a dot. */
function drawWell([x, y]: Point): Item {
  return group('well', [
    circle([x, y], 1.6, { stroke: solid('wide'), fill: white }),
    circle([x, y], 0.5, { fill: black }),
  ]);
}

/** Kept round a mark and its words, and round the well, in a frame that is kept low. */
const roundMark: PaperMm = 8;
const leastUp: PaperMm = 24;
const leastDown: PaperMm = 16;

/** As low a frame as shows every mark, and has room for the list beside it. */
function lowFrame(kit: Kit, plan: SitingPlan, marks: readonly PlanMark[], width: PaperMm): Frame {
  const { end } = laidRows(kit, rowsOf(kit, plan), width, 2 * half - underList);
  const within = (value: PaperMm, least: PaperMm) => Math.min(half, Math.max(least, value));
  const up = within(roundMark - Math.min(...marks.map(({ y }) => y)), leastUp);
  const reached = within(roundMark + Math.max(...marks.map(({ y }) => y)), leastDown);
  const down = within(end + underList - up, reached);
  return { up: within(end + underList - down, up), down };
}

/**
 * What stands round the well, from its distance and direction, north up, to a scale of its own;
 * undefined where nothing can be placed. What lies farther than the plan reaches stands at its
 * edge with an arrow. A plan that is kept low leaves out ground to the north and south on which
 * nothing stands.
 */
export function sitePlanDetail(
  kit: Kit,
  plan: SitingPlan,
  width: PaperMm,
  low = false,
): Detail | undefined {
  if (plan.placed.length === 0) return undefined;
  const reachM = usualReach(plan.reachM ?? 0);
  const marks = planMarks(plan.placed, reachM, edge, 2);
  const listWidth = width - 2 * half - 2;
  const frame = low ? lowFrame(kit, plan, marks, listWidth) : wholeFrame;
  const height = frame.up + frame.down;
  return {
    name: 'sitePlan',
    title: detailWordsIn(kit.words.language).sitePlan,
    bar: { scale: scaleOf(reachM), unit: 'm' },
    width,
    height,
    barAt: [2 * half + 4, height - 5],
    draw: (x, y) => {
      const centre: Point = [x + half, y + frame.up];
      return [
        ...drawGround(kit, reachM, frame, centre),
        drawNorth(kit, frame, centre),
        drawWell(centre),
        ...marks.map((mark, at) => drawMark(mark, plan.placed[at]!.kind, centre)),
        ...drawLabels(kit, marks, plan.placed, frame, centre),
        ...drawList(kit, plan, [x + 2 * half + 2, y + 0.6], listWidth, height),
      ];
    },
  };
}
