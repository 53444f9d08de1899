import type { DepthM, Millimetres, PaperMm } from '../../../base/units.ts';
import { looseCap } from '../../../model/tally.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import { acrossDimension } from '../../dimensions/linear.ts';
import { depthFigure, plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { drawCallouts } from '../../labels/callout.ts';
import { letter } from '../../letters.ts';
import { solid } from '../../pens.ts';
import { axisBottom } from '../../scale.ts';
import { polyline, type Point } from '../../shapes.ts';
import { wordsRoom, type View } from '../columns.ts';
import { centreOf } from '../section/across.ts';
import type { Built } from '../section/built.ts';
import { casingCallouts } from '../section/casingCallouts.ts';
import { fillCallouts } from '../section/fillCallouts.ts';
import { drawSection } from '../section/section.ts';
import { detailView, shownHeight } from './detailView.ts';
import type { Detail } from './detail.ts';
import { detailWordsIn } from './words/languages.ts';

/** How much of the pipe stands over its foot, and how much of the hole under it. */
const aboveM = 0.4;
const belowM = 0.2;
/** For the dimensions over the section, and the words under it. */
const overhead: PaperMm = 13;
const underneath: PaperMm = 4;
const words: PaperMm = 30;

interface Foot {
  readonly string: StringModel;
  readonly last: PieceModel;
  readonly outsideMm: Millimetres;
  /** Of the hole round it; absent where nobody wrote it. */
  readonly holeMm: Millimetres | undefined;
  readonly fromM: DepthM;
  readonly toM: DepthM;
  /** The hole reaches deeper than the detail shows. */
  readonly goesOn: boolean;
}

/** The deepest string, where a sump or a cap ends it and its size is known. */
function footOf({ strings, bore }: Built): Foot | undefined {
  const string = strings.toSorted((a, b) => b.bottomM - a.bottomM)[0];
  const last = string?.pieces.at(-1);
  if (!string || !last) return undefined;
  const closed = last.kind === 'cap' || last.kind === 'sump' || looseCap(string) !== undefined;
  const sized = string.pieces.toReversed().find(({ outsideMm }) => outsideMm !== undefined);
  if (!closed || sized?.outsideMm === undefined) return undefined;
  const { bottomM } = string;
  const section = bore.sections.find(({ fromM, toM }) => fromM < bottomM && bottomM <= toM + 1e-6);
  const deepest = Math.max(bottomM, bore.depthM ?? bottomM);
  return {
    string,
    last,
    outsideMm: sized.outsideMm,
    holeMm: section?.diameterMm,
    fromM: Math.max(bottomM - aboveM, string.topM),
    toM: Math.min(deepest, bottomM + belowM),
    goesOn: deepest > bottomM + belowM + 1e-6,
  };
}

/** Half of each diameter dimensioned over the section, the narrower nearer to it. */
function drawDiameters(kit: Kit, foot: Foot, view: View): Item[] {
  const { outsideMm, holeMm, last } = foot;
  const scale = view.axis.scale;
  const centre = centreOf(view);
  const edge = view.axis.top - 1.5;
  const across = (mm: Millimetres, level: number, source: string) =>
    acrossDimension(kit, {
      from: centre - mm / 2 / scale,
      to: centre + mm / 2 / scale,
      at: edge - 2.5 - level * 4.5,
      edge,
      past: centre + Math.max(outsideMm, holeMm ?? 0) / 2 / scale,
      says: `${kit.words.diameter} ${plainFigure(kit, mm, 1)}`,
      source,
    });
  const sizes = [
    { mm: outsideMm, source: last.path },
    ...(holeMm === undefined ? [] : [{ mm: holeMm, source: 'bore.sections' }]),
  ];
  return sizes
    .toSorted((a, b) => a.mm - b.mm)
    .map(({ mm, source }, level) => across(mm, level, source));
}

/** A zigzag where pipe or hole goes on. */
function drawBreak({ columns }: View, y: PaperMm): Item {
  const { x, width } = columns.section;
  const teeth = Math.max(4, 2 * Math.round(width / 6));
  const points = Array.from({ length: teeth + 1 }, (_, at): Point => {
    const swing = at === 0 || at === teeth ? 0 : at % 2 === 0 ? 0.6 : -0.6;
    return [x + (width * at) / teeth, y + swing];
  });
  return polyline(points, solid('narrow'));
}

/** Length of the sump with all its pieces, metres; undefined where the string has none. */
function sumpLength({ string }: Foot): number | undefined {
  const sumps = string.pieces.filter(({ kind }) => kind === 'sump');
  const [top, foot] = [sumps[0], sumps.at(-1)];
  return top && foot ? foot.bottomM - top.topM : undefined;
}

/** At most one leader for a depth or part that the detail shows. */
function drawWords(kit: Kit, well: Built, view: View): Item[] {
  const { casing, fill } = view.columns;
  const room = wordsRoom(view);
  return [
    drawCallouts(kit, casingCallouts(kit, well, view), { side: 'left', ...casing, ...room }),
    drawCallouts(kit, fillCallouts(kit, well, view), { side: 'right', ...fill, ...room }),
  ];
}

/** The largest scale of a foot, and that of one that is kept low. */
export const footScales = { usual: 5, low: 20 } as const;

/**
 * Sump and bottom cap in section, at one scale down and across that is no larger than `largest`;
 * undefined where the record has neither or their size is not known.
 */
export function footDetail(
  kit: Kit,
  well: Built,
  width: PaperMm,
  largest: number = footScales.usual,
): Detail | undefined {
  const foot = footOf(well);
  if (!foot) return undefined;
  const own = detailWordsIn(kit.words.language);
  const widest = Math.max(foot.holeMm ?? 0, foot.outsideMm);
  const room = width - 2 * words;
  const scale = [5, 10, 20].find((one) => one >= largest && widest / one <= room - 4) ?? 50;
  const section = Math.min(room, widest / scale + 8);
  const side = (width - section) / 2;
  const { fromM, toM } = foot;
  const widths = [side, section, side] as const;
  const shown = { fromM, toM, scale, widths, first: false };
  const height = overhead + shownHeight(shown) + underneath;
  const long = sumpLength(foot);
  return {
    name: 'footDetail',
    title: own.foot,
    bar: { scale, unit: 'mm' },
    width,
    height,
    draw: (x, y) => {
      const view = detailView(shown, x, y + overhead);
      const says =
        long === undefined ? '' : own.sumpLength.replace('{length}', depthFigure(kit, long));
      return [
        drawSection(kit, well, undefined, view),
        drawBreak(view, view.axis.top),
        ...(foot.goesOn ? [drawBreak(view, axisBottom(view.axis))] : []),
        ...drawDiameters(kit, foot, view),
        ...drawWords(kit, well, view),
        ...letter(kit, says, x + width / 2, y + height - 0.6, { anchor: 'middle', widest: width }),
      ];
    },
  };
}
