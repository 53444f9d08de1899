import type { PaperMm } from '../../../base/units.ts';
import type { Headworks } from '../../../record/headworks.ts';
import { acrossDimension, downDimension } from '../../dimensions/linear.ts';
import { depthFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { drawCallouts } from '../../labels/callout.ts';
import { paperLength, yAt } from '../../scale.ts';
import { wordsRoom, type View } from '../columns.ts';
import { centreOf } from '../section/across.ts';
import type { Built } from '../section/built.ts';
import { fillCallouts } from '../section/fillCallouts.ts';
import { drawSection } from '../section/section.ts';
import type { Detail } from './detail.ts';
import { detailView, shownHeight } from './detailView.ts';
import { detailWordsIn } from './words/languages.ts';

const belowM = 0.6;
const overhead: PaperMm = 9;
/** For what the ring round the casing is filled with, and what a narrow detail keeps for it. */
const wordsWidth: PaperMm = 34;
const wordsShare = 0.255;
const leftWidth: PaperMm = 20;
const leftShare = 0.13;
/** Ground beside the pad. */
const beside: PaperMm = 2;

function stickUpM({ strings }: Built, headworks: Headworks): number | undefined {
  const ups = strings.map((one) => one.stickUpM);
  return headworks.casingAboveGround ?? (ups.length > 0 ? Math.max(...ups) : undefined);
}

/** Half the widest casing at the top. */
function outerHalf({ strings }: Built, scale: number): PaperMm {
  const outsides = strings.flatMap(({ pieces }) => pieces[0]?.outsideMm ?? []);
  return Math.max(0, ...outsides) / 2 / scale;
}

/** Kept between the middle of a figure and the pad under it. */
const overPad: PaperMm = 1.7;

function drawFigures(kit: Kit, well: Built, headworks: Headworks, view: View): Item[] {
  const upM = stickUpM(well, headworks);
  const { padLength = 0, padThickness } = headworks;
  const { scale, top } = view.axis;
  const half = paperLength(padLength, scale) / 2;
  const centre = centreOf(view);
  const left = centre - half;
  const ground = yAt(view.axis, 0);
  const padTop = ground - paperLength(padThickness ?? 0, scale);
  const upper = ground - paperLength(upM ?? 0, scale);
  const metres = (value: number) => `${depthFigure(kit, value)} m`;
  const pad = acrossDimension(kit, {
    from: left,
    to: centre + half,
    at: top - 4,
    edge: top - 1,
    says: metres(padLength),
    source: 'headworks.padLength',
  });
  const thickness =
    padThickness === undefined
      ? []
      : [
          downDimension(kit, {
            from: padTop,
            to: ground,
            at: left - 4,
            edge: left,
            says: metres(padThickness),
            source: 'headworks.padThickness',
          }),
        ];
  const up =
    upM === undefined || upM <= 0
      ? []
      : [
          downDimension(kit, {
            from: upper,
            to: ground,
            at: centre - half / 2,
            edge: centre - outerHalf(well, scale),
            middle: Math.min((upper + padTop) / 2, padTop - overPad),
            says: metres(upM),
            source: 'headworks.casingAboveGround',
          }),
        ];
  return [pad, ...thickness, ...up];
}

/** Pad, casing top and the ring under them in section; undefined where no pad is known. */
export function headDetail(
  kit: Kit,
  well: Built,
  headworks: Headworks | undefined,
  width: PaperMm,
  most: PaperMm = Infinity,
): Detail | undefined {
  const { padLength, padThickness } = headworks ?? {};
  if (!headworks || padLength === undefined || well.strings.length === 0) return undefined;
  const words = Math.min(wordsWidth, width * wordsShare);
  const leftWords = Math.min(leftWidth, width * leftShare);
  const room = width - words - leftWords - 2 * beside;
  const upM = stickUpM(well, headworks);
  const fromM = -Math.max(upM ?? 0, padThickness ?? 0, 0.1) - 0.05;
  const scale =
    [20, 50, 100].find(
      (one) =>
        paperLength(padLength, one) <= room && overhead + paperLength(belowM - fromM, one) <= most,
    ) ?? 200;
  const section = paperLength(padLength, scale) + 2;
  const left = (width - section - words + leftWords) / 2;
  const widths = [left, section, width - left - section] as const;
  const shown = { fromM, toM: belowM, scale, widths, first: true };
  return {
    name: 'headDetail',
    title: detailWordsIn(kit.words.language).head,
    bar: { scale, unit: 'm' },
    width,
    height: overhead + shownHeight(shown),
    draw: (x, y) => {
      const view = detailView(shown, x, y + overhead);
      const { fill } = view.columns;
      const said = fillCallouts(kit, well, view);
      return [
        drawSection(kit, well, headworks, view),
        ...drawFigures(kit, well, headworks, view),
        drawCallouts(kit, said, { side: 'right', ...fill, ...wordsRoom(view) }),
      ];
    },
  };
}
