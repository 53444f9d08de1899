import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { PlacedSurrounding, SitingPlan } from '../../../water/results.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { baseline, letter, lettered, wrapped } from '../../letters.ts';
import { lineHeight } from '../../pens.ts';
import { group, type Point } from '../../shapes.ts';
import { detailWordsIn } from '../details/words/languages.ts';
import { numberOf } from './marks.ts';
import { usualReach } from './reach.ts';
import { surroundingSign } from './signs.ts';

interface Row {
  readonly path: RecordPath;
  readonly kind: PlacedSurrounding['kind'];
  readonly says: readonly string[];
}

/** Everything of the record in its order, placed or not. */
export function rowsOf(kit: Kit, plan: SitingPlan): Row[] {
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

/** What the notes under the list and the scale bar take of the height beside the plan. */
export const underList: PaperMm = 30;
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
export function laidRows(kit: Kit, rows: readonly Row[], width: PaperMm, room: PaperMm) {
  const laid: LaidRow[] = [];
  let down = 0;
  for (const row of rows) {
    const lines = wrapped(kit, row.says.filter(Boolean).join(', '), width - listWords);
    const height = Math.max(lines.length * lineHeight('small') + 0.6, signPitch);
    if (down + height > room + 1e-6) break;
    laid.push({ ...row, lines, down });
    down += height;
  }
  return { laid, end: down };
}

/** What stands round the well, as a list beside a plan of some height. */
export function drawList(
  kit: Kit,
  plan: SitingPlan,
  [x, y]: Point,
  width: PaperMm,
  height: PaperMm,
): Item[] {
  const rows = rowsOf(kit, plan);
  const { laid, end } = laidRows(kit, rows, width, height - underList);
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
