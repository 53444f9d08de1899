import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { PlacedSurrounding, SitingPlan } from '../../../water/results.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter, lettered, widthOf, wrapped } from '../../letters.ts';
import { placeLabels } from '../../map/labels.ts';
import { black, dashed, letterings, lineHeight, solid, white } from '../../pens.ts';
import { paperLength } from '../../scale.ts';
import { circle, group, line, polygon, rectangle, type Point } from '../../shapes.ts';
import type { Detail } from '../details/detail.ts';
import { detailWordsIn } from '../details/words/languages.ts';
import { numberOf, planMarks, type PlanMark } from './marks.ts';
import { ringsOf, usualReach } from './reach.ts';

/** Length on paper of what the plan reaches, and from the well to the plan's edge. */
const edge: PaperMm = 50;
const half: PaperMm = 57;
const markRadius: PaperMm = 2;

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
  return polygon([at(4.2, 0), at(2.3, 1.1), at(2.3, -1.1)], { fill: black });
}

function drawMark(kit: Kit, mark: PlanMark, [cx, cy]: Point): Item {
  const [x, y] = [cx + mark.x, cy + mark.y];
  const { path, number, beyond } = mark;
  const stroke = beyond ? { ...solid('narrow'), dash: [0.8, 0.6] } : solid('narrow');
  const baseline = y + letterings.small / 2;
  return group(
    'surrounding',
    [
      ...(beyond ? [arrow(mark, x, y)] : []),
      circle([x, y], markRadius, { stroke, fill: white, source: path }),
      ...letter(kit, String(number), x, baseline, { anchor: 'middle', source: path }),
    ],
    { source: path },
  );
}

/** Distances beside the marks, where they find room; the list beside has them all. */
function drawDistances(
  kit: Kit,
  marks: readonly PlanMark[],
  placed: readonly PlacedSurrounding[],
  [x, y]: Point,
): Item[] {
  const says = placed.map(({ distanceM }) => `${plainFigure(kit, distanceM, 1)} m`);
  const height = lineHeight('small');
  const signs = marks.map((mark, at) => ({
    x: mark.x + half,
    y: mark.y + half,
    width: widthOf(kit, says[at]!),
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
  const places = placeLabels([...kept, arrowed, ...signs], 2 * markRadius + 1, frame);
  return marks.flatMap(({ path }, at) => {
    const place = places[at + kept.length + 1];
    if (!place) return [];
    const [left, top] = [x - half + place.x, y - half + place.y];
    return lettered(kit, [says[at]!], left, top, { source: path });
  });
}

/** The well in the middle: a ring with a dot, since what stands round it is numbered. */
function drawWell([x, y]: Point): Item {
  return group('well', [
    circle([x, y], 1.6, { stroke: solid('wide'), fill: white }),
    circle([x, y], 0.5, { fill: black }),
  ]);
}

interface Row {
  readonly path: RecordPath;
  readonly says: readonly string[];
}

/** Everything of the record in its order, placed or not. */
function rowsOf(kit: Kit, plan: SitingPlan): Row[] {
  const { kinds, slopes } = detailWordsIn(kit.words.language);
  const figure = (value: number) => plainFigure(kit, value, 1);
  const placed = plan.placed.map(({ path, kind, distanceM, directionDegrees, slope }) => ({
    path,
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
      says: [kinds[kind], `${figure(distanceM)} m`],
    })),
    ...plan.withoutDistance.map(({ path, kind }) => ({ path, says: [kinds[kind]] })),
  ];
  return [...placed, ...others].sort((a, b) => numberOf(a.path) - numberOf(b.path));
}

const mostRows = 24;

/** Sentences under the list: what was left out of it, and what the plan could not show. */
function notesOf(kit: Kit, plan: SitingPlan, rows: readonly Row[]): string[] {
  const own = detailWordsIn(kit.words.language);
  const left = rows.length - mostRows;
  const beyond = plan.placed.some(({ distanceM }) => distanceM > usualReach(plan.reachM ?? 0));
  return [
    ...(left > 0 ? [`${left} ${kit.words.moreFindings}`] : []),
    ...(beyond ? [own.beyond] : []),
    ...(plan.placed.length < rows.length ? [own.notPlaced] : []),
  ];
}

/** What stands round the well, as a list beside the plan. */
function drawList(kit: Kit, plan: SitingPlan, x: PaperMm, y: PaperMm, width: PaperMm): Item[] {
  const pitch = lineHeight('small');
  const rows = rowsOf(kit, plan);
  let top = y;
  const items = rows.slice(0, mostRows).flatMap(({ path, says }): Item[] => {
    const lines = wrapped(kit, says.filter(Boolean).join(', '), width - 6);
    const look = { anchor: 'end', face: 'bold', source: path } as const;
    const drawn = [
      ...letter(kit, String(numberOf(path)), x + 4, top + baseline('small'), look),
      ...lettered(kit, lines, x + 6, top, { source: path }),
    ];
    top += lines.length * pitch + 0.6;
    return drawn;
  });
  const under = notesOf(kit, plan, rows).flatMap((note) => wrapped(kit, note, width - 1));
  return [...items, ...lettered(kit, under, x + 1, top + 1.5)];
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
    draw: (x, y) => {
      const centre: Point = [x + half, y + half];
      return [
        ...drawGround(kit, reachM, centre),
        drawNorth(kit, centre),
        drawWell(centre),
        ...marks.map((mark) => drawMark(kit, mark, centre)),
        ...drawDistances(kit, marks, plan.placed, centre),
        ...drawList(kit, plan, x + 2 * half + 2, y, width - 2 * half - 2),
      ];
    },
  };
}
