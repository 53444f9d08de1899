import type { RecordPath } from '../base/recordPath.ts';
import { roundDepth, type Range } from './range.ts';
import type { PieceModel, StringModel } from './wellModel.ts';

/** Screens that stand one on the other, without the end of the lowest in the piece below. */
export interface ScreenRun extends Range {
  /** Index of the string. */
  readonly string: number;
  /** From the top down. */
  readonly pieces: readonly PieceModel[];
  /** The row of its uppermost piece. */
  readonly path: RecordPath;
}

/** The screens of a string, those that touch taken together, from the top down. */
export function screenRuns({ index, pieces }: StringModel): ScreenRun[] {
  const runs: ScreenRun[] = [];
  let open = false;
  for (const piece of pieces) {
    const last = runs.at(-1);
    const isScreen = piece.kind === 'screen';
    const toM = roundDepth(piece.bottomM - piece.insertionM);
    if (isScreen && open && last)
      runs[runs.length - 1] = { ...last, toM, pieces: [...last.pieces, piece] };
    else if (isScreen)
      runs.push({ string: index, fromM: piece.topM, toM, pieces: [piece], path: piece.path });
    open = isScreen;
  }
  return runs;
}
