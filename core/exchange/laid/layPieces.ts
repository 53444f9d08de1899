import { valueAt, type RecordPath } from '../../base/recordPath.ts';
import type { DepthM } from '../../base/units.ts';
import { writtenDepth, resolveSections } from '../../model/bore.ts';
import { resolveStrings } from '../../model/tally.ts';
import type { PieceModel, StringModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { CasingString, Component } from '../../record/strings.ts';

/** A piece of casing by its depths, without the part that goes into the piece below. */
export interface LaidPiece {
  readonly from: DepthM;
  readonly to: DepthM;
  readonly component: Component;
  /** Of the component that it is one of. */
  readonly path: RecordPath;
}

export interface LaidString {
  /** Its place in the record. */
  readonly index: number;
  readonly string: CasingString;
  /** From the top down; each begins where the one above it ends. */
  readonly pieces: readonly LaidPiece[];
  readonly bottomM: DepthM;
  readonly placedBy: StringModel['placedBy'];
}

function laidPiece(
  record: WellRecord,
  piece: PieceModel,
  below: PieceModel | undefined,
): LaidPiece {
  const component = valueAt(record, piece.path) as Component;
  return { from: piece.topM, to: below?.topM ?? piece.bottomM, component, path: piece.path };
}

/** Strings as lengths by depth, for formats that know no tally. One without lengths is left out. */
export function layStrings(record: WellRecord): LaidString[] {
  const holeM = writtenDepth(record.bore, resolveSections(record.bore).value);
  return resolveStrings(record, holeM).value.map(({ index, pieces, bottomM, placedBy }) => ({
    ...{ index, bottomM, placedBy },
    string: record.strings![index]!,
    pieces: pieces.map((piece, at) => laidPiece(record, piece, pieces[at + 1])),
  }));
}
