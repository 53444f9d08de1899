import type { DepthM, Millimetres } from '../base/units.ts';
import { boundsOf, cellsBetween, covers, type Range } from './range.ts';
import type { BoreModel, PieceModel, StringModel } from './wellModel.ts';

/** A string's pipe at some depth; a size that is not known is undefined. */
export interface PipeAt {
  readonly string: StringModel;
  readonly outsideMm: Millimetres | undefined;
  /** 0 in a cap, which holds nothing. */
  readonly insideMm: Millimetres | undefined;
}

/** A stretch of the well in which no diameter changes. */
export interface WellCell extends Range {
  /** Undefined above ground, below the hole and where no diameter was recorded. */
  readonly boreMm: Millimetres | undefined;
  /** The pipes that stand there, the outermost first. */
  readonly pipes: readonly PipeAt[];
}

/**
 * A cone as the cylinder that holds as much: V = π/12 L (D² + Dd + d²), so that a reducer is one
 * ring and its litres are exact.
 */
function meanMm(lowerMm: Millimetres, upperMm: Millimetres): Millimetres {
  return Math.sqrt((lowerMm * lowerMm + lowerMm * upperMm + upperMm * upperMm) / 3);
}

function outsideOf({ outsideMm, upperOutsideMm }: PieceModel): Millimetres | undefined {
  if (outsideMm === undefined || upperOutsideMm === undefined) return outsideMm;
  return upperOutsideMm === outsideMm ? outsideMm : meanMm(outsideMm, upperOutsideMm);
}

function insideOf(piece: PieceModel): Millimetres | undefined {
  if (piece.kind === 'cap') return 0;
  const { outsideMm, upperOutsideMm = outsideMm, wallMm, insideMm } = piece;
  if (outsideMm === undefined || upperOutsideMm === undefined) return insideMm;
  if (outsideMm === upperOutsideMm) return insideMm;
  if (wallMm === undefined || insideMm === undefined) return undefined;
  return meanMm(outsideMm - 2 * wallMm, upperOutsideMm - 2 * wallMm);
}

function best(
  sizes: readonly (number | undefined)[],
  pick: (...sizes: number[]) => number,
): number | undefined {
  const told = sizes.filter((size) => size !== undefined);
  return told.length === 0 ? undefined : pick(...told);
}

function rangeOf({ topM, bottomM }: { topM: DepthM; bottomM: DepthM }): Range {
  return { fromM: topM, toM: bottomM };
}

/**
 * The pipe of a string over a stretch. In a joint two pieces stand one in the other: the wider
 * gives the outside, the narrower the inside.
 */
function pipeAt(string: StringModel, cell: Range): PipeAt | undefined {
  const there = string.pieces.filter((piece) => covers(rangeOf(piece), cell));
  if (there.length === 0) return undefined;
  const open = there.filter(({ kind }) => kind !== 'cap');
  return {
    string,
    outsideMm: best(there.map(outsideOf), Math.max),
    insideMm: best((open.length > 0 ? open : there).map(insideOf), Math.min),
  };
}

function widestMm(string: StringModel): Millimetres {
  return Math.max(
    0,
    ...string.pieces.map(({ outsideMm, insideMm, upperOutsideMm }) =>
      Math.max(outsideMm ?? insideMm ?? 0, upperOutsideMm ?? 0),
    ),
  );
}

/** The strings as they stand one in the other: the widest is outermost, else the first set. */
export function nestStrings(strings: readonly StringModel[]): StringModel[] {
  return [...strings].sort((a, b) => widestMm(b) - widestMm(a) || a.index - b.index);
}

/**
 * The whole well, from the highest top to the deepest point, in stretches in which nothing
 * changes. `bounds` are further depths at which to part them.
 */
export function cutColumn(
  bore: BoreModel,
  strings: readonly StringModel[],
  bounds: readonly DepthM[],
): WellCell[] {
  const nested = nestStrings(strings);
  const depths = [
    0,
    ...(bore.depthM === undefined ? [] : [bore.depthM]),
    ...boundsOf(bore.sections),
    ...nested.flatMap(({ pieces }) => boundsOf(pieces.map(rangeOf))),
    ...bounds,
  ];
  return cellsBetween(depths).map((cell) => ({
    ...cell,
    boreMm: bore.sections.find((section) => covers(section, cell))?.diameterMm,
    pipes: nested.flatMap((string) => pipeAt(string, cell) ?? []),
  }));
}
