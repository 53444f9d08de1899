import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { PlacedSurrounding, SitingPlan } from '../../../water/results.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter, lettered, widthOf, wrapped } from '../../letters.ts';
import { placeLabels } from '../../map/labels.ts';
import { black, dashed, lineHeight, solid, white } from '../../pens.ts';
import { paperLength } from '../../scale.ts';
import { circle, group, line, polygon, rectangle, type Point } from '../../shapes.ts';
import type { Detail } from '../details/detail.ts';
import { detailWordsIn } from '../details/words/languages.ts';
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

function drawGround(kit: Kit, reachM: number, [x, y]: Point): Item[] {
  const rings = ringsOf(reachM).map((one) => ({
    says: `${plainFigure(kit, one, 1)} m`,
    radius: paperLength(one, scaleOf(reachM)),
  }));
  return [
    rectangle(
      { x: x - half, y: y - half, width: 2 * half, height: 2 * half },
      { stroke: solid('thin') },
    ),
    line([x - edge, y], [x + edge, y], solid('hair')),
    line([x, y - edge], [x, y + edge], solid('hair')),
    ...rings.map(({ radius }) => circle([x, y], radius, { stroke: dashed('hair') })),
    ...rings.flatMap(({ says, radius }) => letter(kit, says, x + 0.8, y + radius - 0.8)),
  ];
}

/** An arrow to true north in the corner. */
function drawNorth(kit: Kit, [x, y]: Point): Item {
  const [cx, top] = [x + half - 6, y - half + 3];
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
  [x, y]: Point,
): Item[] {
  const labels = marks.map(({ path }, at) => labelOf(kit, path, placed[at]!));
  const height = lineHeight('small');
  const signs = marks.map((mark, at) => ({
    x: mark.x + half,
    y: mark.y + half,
    width: labels[at]!.width,
    height,
  }));
  // The rings' own figures and the well are kept free like marks.
  const kept = [...ringsOf(1).map((one) => one * edge), 0].map((down) => ({
    x: half + 4,
    y: half + down - 1.5,
    width: half,
    height,
  }));
  const arrowed = { x: 2 * half - 6, y: 10, width: half, height };
  const frame = { width: 2 * half - 1, height: 2 * half - 1 };
  const places = placeLabels([...kept, arrowed, ...signs], besideSign, frame);
  return marks.flatMap(({ path }, at) => {
    const place = places[at + kept.length + 1];
    if (!place) return [];
    const [left, top] = [x - half + place.x, y - half + place.y];
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

interface Row {
  readonly path: RecordPath;
  readonly kind: PlacedSurrounding['kind'];
  readonly says: readonly string[];
}

/** Everything of the record in its order, placed or not. */
function rowsOf(kit: Kit, plan: SitingPlan): Row[] {
  const { kinds, slopes } = detailWordsIn(kit.words.language);
  const figure = (value: number) => plainFigure(kit, value, 1);
  const placed = plan.placed.map(({ path, kind, distanceM, directionDegrees, slope }) => ({
    path,
    kind,
    says: [
      kinds[kind],
      `${figure(distanceM)} m`,
      distanceM === 0 ? '' : `${figure(directionDegrees)}°`,
      slope ? slopes[slope] : '',
    ],
  }));
  const others = [
    ...plan.withoutDirection.map(({ path, kind, distanceM }) => ({
      path,
      kind,
      says: [kinds[kind], `${figure(distanceM)} m`],
    })),
    ...plan.withoutDistance.map(({ path, kind }) => ({ path, kind, says: [kinds[kind]] })),
  ];
  return [...placed, ...others].sort((a, b) => numberOf(a.path) - numberOf(b.path));
}

/** What the list may take over its notes and the scale bar. */
const listRoom: PaperMm = 2 * half - 30;
/** From one row of the list to the next, so that signs stand apart; where the words of a row begin. */
const signPitch: PaperMm = 4.4;
const listWords: PaperMm = 10.5;

/** Sentences under the list: what was left out of it, and what the plan could not show. */
function notesOf(kit: Kit, plan: SitingPlan, left: number): string[] {
  const own = detailWordsIn(kit.words.language);
  const beyond = plan.placed.some(({ distanceM }) => distanceM > usualReach(plan.reachM ?? 0));
  return [
    ...(left > 0 ? [`${left} ${kit.words.moreFindings}`] : []),
    ...(beyond ? [own.beyond] : []),
    ...(plan.withoutDirection.length + plan.withoutDistance.length > 0 ? [own.notPlaced] : []),
  ];
}

interface LaidRow extends Row {
  readonly lines: readonly string[];
  readonly down: PaperMm;
}

/** As many rows as have room, each with its lines and how far down it stands; and where they end. */
function laidRows(kit: Kit, rows: readonly Row[], width: PaperMm) {
  const laid: LaidRow[] = [];
  let down = 0;
  for (const row of rows) {
    const lines = wrapped(kit, row.says.filter(Boolean).join(', '), width - listWords);
    const height = Math.max(lines.length * lineHeight('small') + 0.6, signPitch);
    if (down + height > listRoom) break;
    laid.push({ ...row, lines, down });
    down += height;
  }
  return { laid, end: down };
}

/** What stands round the well, as a list beside the plan. */
function drawList(kit: Kit, plan: SitingPlan, x: PaperMm, y: PaperMm, width: PaperMm): Item[] {
  const rows = rowsOf(kit, plan);
  const { laid, end } = laidRows(kit, rows, width);
  const items = laid.flatMap(({ path, kind, lines, down }): Item[] => {
    const top = y + down;
    const middle = top + lineHeight('small') / 2 + 0.1;
    const look = { anchor: 'end', face: 'bold', source: path } as const;
    return [
      ...letter(kit, String(numberOf(path)), x + 4, top + baseline('small'), look),
      group('sign', surroundingSign(kind, [x + 7.4, middle]), { source: path }),
      ...lettered(kit, lines, x + listWords, top, { source: path }),
    ];
  });
  const notes = notesOf(kit, plan, rows.length - laid.length);
  const under = notes.flatMap((note) => wrapped(kit, note, width - 1));
  return [...items, ...lettered(kit, under, x + 1, y + end + 1.5)];
}

/**
 * What stands round the well, from its distance and direction, north up, to a scale of its own;
 * undefined where nothing can be placed. What lies farther than the plan reaches stands at its
 * edge with an arrow.
 */
export function sitePlanDetail(kit: Kit, plan: SitingPlan, width: PaperMm): Detail | undefined {
  if (plan.placed.length === 0) return undefined;
  const reachM = usualReach(plan.reachM ?? 0);
  const marks = planMarks(plan.placed, reachM, edge, 2);
  return {
    name: 'sitePlan',
    title: detailWordsIn(kit.words.language).sitePlan,
    bar: { scale: scaleOf(reachM), unit: 'm' },
    width,
    height: 2 * half,
    barAt: [2 * half + 4, 2 * half - 5],
    draw: (x, y) => {
      const centre: Point = [x + half, y + half];
      return [
        ...drawGround(kit, reachM, centre),
        drawNorth(kit, centre),
        drawWell(centre),
        ...marks.map((mark, at) => drawMark(mark, plan.placed[at]!.kind, centre)),
        ...drawLabels(kit, marks, plan.placed, centre),
        ...drawList(kit, plan, x + 2 * half + 2, y + 0.6, width - 2 * half - 2),
      ];
    },
  };
}
