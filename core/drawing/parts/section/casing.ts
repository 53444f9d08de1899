import type { PaperMm } from '../../../base/units.ts';
import { looseCap } from '../../../model/tally.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { black, dashed, pens, solid, white } from '../../pens.ts';
import { shownPart, shows, yAt } from '../../scale.ts';
import { group, line, polygon, rectangle } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, drawnMm, edgeAt, halfOfPiece, sides, type Side } from './across.ts';
import { drawSlots } from './slots.ts';

/** Below this a wall is drawn as one filled line, since two lines would run together in print. */
const thinnestOpenWall: PaperMm = 0.7;

export function wallIsFilled(view: View, piece: PieceModel): boolean {
  return piece.wallMm === undefined || piece.wallMm / (view.widthScale ?? 10) < thinnestOpenWall;
}

/** Width of a wall on paper: true to scale, but no thinner than a wide line. */
function wallWidth(view: View, piece: PieceModel): PaperMm {
  const trueWidth = (piece.wallMm ?? 0) / (view.widthScale ?? 10);
  return Math.max(trueWidth, pens.wide);
}

function drawWall(view: View, piece: PieceModel, side: Side): Item[] {
  const part = shownPart(view.axis, piece.topM, piece.bottomM);
  if (!part || piece.outsideMm === undefined) return [];
  const upper = edgeAt(view, side, piece.upperOutsideMm ?? piece.outsideMm);
  const lower = edgeAt(view, side, piece.outsideMm);
  const inward = -side * wallWidth(view, piece);
  const top = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  return [
    polygon(
      [
        [upper, top],
        [lower, foot],
        [lower + inward, foot],
        [upper + inward, top],
      ],
      wallIsFilled(view, piece)
        ? { fill: black, source: piece.path }
        : { fill: white, stroke: solid('narrow'), source: piece.path },
    ),
  ];
}

/** A pipe whose outside nobody recorded: dashed walls, at its inside where that is known. */
function drawUnknownPiece(view: View, piece: PieceModel): Item[] {
  const part = shownPart(view.axis, piece.topM, piece.bottomM);
  if (!part) return [];
  const half = halfOfPiece(view, piece);
  return sides.map((side) => {
    const x = centreOf(view) + side * half;
    return line(
      [x, yAt(view.axis, part.fromM)],
      [x, yAt(view.axis, part.toM)],
      dashed('medium'),
      piece.path,
    );
  });
}

/** Height of a cap on paper where its true height would be too thin to see. */
const leastCap: PaperMm = 0.9;

function drawCap(view: View, piece: PieceModel): Item[] {
  if (!shows(view.axis, piece.bottomM, view.first)) return [];
  const half = halfOfPiece(view, piece);
  const foot = yAt(view.axis, piece.bottomM);
  const top = Math.min(yAt(view.axis, Math.max(piece.topM, view.axis.fromM)), foot - leastCap);
  const box = { x: centreOf(view) - half, y: top, width: 2 * half, height: foot - top };
  return [rectangle(box, { fill: black, source: piece.path })];
}

/** The joint at a piece's foot: a short tick across the wall, where the next piece begins. */
function drawJoint(view: View, piece: PieceModel, last: boolean): Item[] {
  const y = piece.bottomM - piece.insertionM;
  const mm = drawnMm(piece);
  if (last || mm === undefined || !shows(view.axis, y, view.first)) return [];
  return sides.map((side) => {
    const x = edgeAt(view, side, mm);
    const at = yAt(view.axis, y);
    return line([x - side * 0.9, at], [x + side * 0.7, at], solid('narrow'), piece.path);
  });
}

function drawPiece(view: View, piece: PieceModel, last: boolean): Item {
  const walls =
    piece.outsideMm === undefined
      ? drawUnknownPiece(view, piece)
      : sides.flatMap((side) => drawWall(view, piece, side));
  const slots = piece.kind === 'screen' ? drawSlots(view, piece, wallIsFilled(view, piece)) : [];
  const joint = drawJoint(view, piece, last);
  const items = piece.kind === 'cap' ? drawCap(view, piece) : [...walls, ...slots, ...joint];
  return group(piece.kind, items, { source: piece.path });
}

/** A cap without a length closes the foot of the lowest piece. */
function drawLooseCap(view: View, string: StringModel): Item[] {
  const [path, lowest] = [looseCap(string), string.pieces.at(-1)];
  if (path === undefined || !lowest) return [];
  const cap = { ...lowest, topM: lowest.bottomM, path };
  return [group('cap', drawCap(view, cap), { source: path })];
}

/** One string: walls true to scale, slots, joints, sump and cap. */
export function drawCasing(string: StringModel, view: View): Item {
  const { pieces } = string;
  return group(
    'string',
    [
      ...pieces.map((piece, at) => drawPiece(view, piece, at === pieces.length - 1)),
      ...drawLooseCap(view, string),
    ],
    { source: string.path },
  );
}
