import type { Millimetres, PaperMm } from '../../../base/units.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import { downDimension } from '../../dimensions/linear.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter, lettered, wrapped } from '../../letters.ts';
import { black, lineHeight, solid } from '../../pens.ts';
import { group, line, polyline, rectangle, type Point } from '../../shapes.ts';
import type { Detail } from './detail.ts';
import { detailWordsIn } from './words/languages.ts';

/** A screen whose slots are known by width and distance. */
type Slotted = PieceModel & {
  readonly slotWidthMm: Millimetres;
  readonly slotSpacingMm: Millimetres;
};

function isSlotted(piece: PieceModel): piece is Slotted {
  const { slotWidthMm = 0, slotSpacingMm = 0 } = piece;
  return slotWidthMm > 0 && slotSpacingMm > slotWidthMm;
}

/** The first screen of each kind of slot, from the top. */
export function slottedPieces(strings: readonly StringModel[]): Slotted[] {
  const all = strings.flatMap(({ pieces }) => pieces.filter(isSlotted));
  const kindOf = ({ slotWidthMm, slotSpacingMm }: Slotted) => `${slotWidthMm} ${slotSpacingMm}`;
  return all.filter((one, at) => all.findIndex((other) => kindOf(other) === kindOf(one)) === at);
}

const windowHeight: PaperMm = 44;
const leftOfWindow: PaperMm = 16;
const rightOfWindow: PaperMm = 18;

/** The largest of the series at which at least three slots stand in the window. */
function scaleFor(spacingMm: Millimetres): number {
  return [0.2, 0.5, 1, 2, 5, 10].find((scale) => (3.2 * spacingMm) / scale <= windowHeight) ?? 20;
}

/** A zigzag down an edge where the pipe goes on. */
function edge(x: PaperMm, top: PaperMm, height: PaperMm): Item {
  const teeth = 2 * Math.round(height / 6);
  const points = Array.from({ length: teeth + 1 }, (_, at): Point => {
    const swing = at === 0 || at === teeth ? 0 : at % 2 === 0 ? 0.6 : -0.6;
    return [x + swing, top + (height * at) / teeth];
  });
  return polyline(points, solid('narrow'));
}

/** Slots as black stripes of their true width, the bridge between two rows in the middle. */
function drawSlots(piece: Slotted, scale: number, x: PaperMm, y: PaperMm, wide: PaperMm): Item[] {
  const pitch = piece.slotSpacingMm / scale;
  const high = piece.slotWidthMm / scale;
  const count = Math.floor((windowHeight - high - 1) / pitch);
  const first = y + (windowHeight - count * pitch) / 2;
  const half = wide / 2 - 3;
  return Array.from({ length: count + 1 }, (_, at) => first + at * pitch).flatMap((middle) =>
    [x + 1.4, x + wide / 2 + 3].map((left) =>
      rectangle(
        { x: left, y: middle - high / 2, width: half - 1.4, height: high },
        { fill: black, source: piece.path },
      ),
    ),
  );
}

function drawFigures(
  kit: Kit,
  piece: Slotted,
  scale: number,
  x: PaperMm,
  y: PaperMm,
  wide: PaperMm,
) {
  const pitch = piece.slotSpacingMm / scale;
  const count = Math.floor((windowHeight - piece.slotWidthMm / scale - 1) / pitch);
  const first = y + (windowHeight - count * pitch) / 2;
  const right = x + wide;
  const mm = (value: number) => `${plainFigure(kit, value, 2)} mm`;
  const { slot } = kit.words;
  return [
    downDimension(kit, {
      from: first,
      to: first + pitch,
      at: x - 4,
      edge: x,
      says: mm(piece.slotSpacingMm),
      source: piece.path,
    }),
    line([right - 1.4, first + pitch], [right + 4, first + pitch], solid('hair')),
    ...lettered(kit, [slot, mm(piece.slotWidthMm)], right + 4.6, first + pitch - 2.6, {
      source: piece.path,
    }),
  ];
}

/**
 * The slots of a screen at their true width and distance, on the outside of the pipe laid flat;
 * how long a slot is stands in no record, so they are cut at both sides.
 */
export function slotDetail(kit: Kit, piece: Slotted, width: PaperMm): Detail {
  const own = detailWordsIn(kit.words.language);
  const scale = scaleFor(piece.slotSpacingMm);
  const wide = width - leftOfWindow - rightOfWindow;
  const { openAreaPercent } = piece;
  const open =
    openAreaPercent === undefined
      ? ''
      : `${kit.words.openArea} ${plainFigure(kit, openAreaPercent, 1)} %`;
  return {
    name: 'slotDetail',
    title: own.slots,
    bar: { scale, unit: 'mm' },
    width,
    height: windowHeight + lineHeight('small') + 1,
    draw: (x, y) => {
      const left = x + leftOfWindow;
      const level = (at: PaperMm) => line([left, at], [left + wide, at], solid('narrow'));
      return [
        level(y),
        level(y + windowHeight),
        edge(left, y, windowHeight),
        edge(left + wide, y, windowHeight),
        group('slots', drawSlots(piece, scale, left, y, wide), { source: piece.path }),
        ...drawFigures(kit, piece, scale, left, y, wide),
        ...letter(kit, wrapped(kit, open, wide)[0] ?? '', left + wide / 2, y + windowHeight + 3.4, {
          anchor: 'middle',
          source: piece.path,
        }),
      ];
    },
  };
}
