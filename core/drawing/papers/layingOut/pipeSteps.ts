import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, Metres } from '../../../base/units.ts';
import { roundDepth } from '../../../model/range.ts';
import { looseCap } from '../../../model/tally.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import type { SitePipe } from '../../../record/layingOut.ts';
import { isCut } from './cutPipes.ts';

/** One pipe as it goes in. */
export interface PipeStep {
  /** 1 goes in first; counted on over all strings of the well. */
  readonly number: number;
  readonly kind: PieceModel['kind'];
  /** End to end; absent of a cap that adds nothing. */
  readonly lengthM?: Metres;
  readonly cut: boolean;
  /** From the string's lower end to this pipe's upper end. */
  readonly runningM: Metres;
  /** Where its upper end, the joint with the next, stands once all is in; negative above ground. */
  readonly topM: DepthM;
  readonly bottomM: DepthM;
  /** Centralisers, metres above the pipe's own lower end. */
  readonly centralisersM: readonly Metres[];
  readonly path: RecordPath;
}

/** A string with its pipes in the order in which they go in, the lowest first. */
export interface StringSteps {
  readonly string: StringModel;
  readonly steps: readonly PipeStep[];
}

function pieceStep(
  piece: PieceModel,
  string: StringModel,
  number: number,
  pipes: readonly SitePipe[],
): PipeStep {
  const { kind, topM, bottomM, path } = piece;
  return {
    number,
    kind,
    lengthM: roundDepth(bottomM - topM),
    cut: isCut(piece, string, pipes),
    runningM: roundDepth(string.bottomM - topM),
    topM,
    bottomM,
    centralisersM: piece.centralisersM.map((depthM) => roundDepth(bottomM - depthM)),
    path,
  };
}

/** A cap that adds no length goes in first all the same. */
function capStep(string: StringModel, number: number): PipeStep[] {
  const path = looseCap(string);
  if (path === undefined) return [];
  const { bottomM } = string;
  const nothing = { cut: false, runningM: 0, topM: bottomM, bottomM, centralisersM: [] };
  return [{ number, kind: 'cap', ...nothing, path }];
}

/** The strings in the order in which they are set, each from its lowest pipe upwards. */
export function pipeSteps(
  strings: readonly StringModel[],
  pipes: readonly SitePipe[] = [],
): StringSteps[] {
  let count = 0;
  return strings.map((string) => {
    const cap = capStep(string, count + 1);
    const first = count + cap.length + 1;
    const upwards = string.pieces.toReversed();
    const steps = [...cap, ...upwards.map((one, at) => pieceStep(one, string, first + at, pipes))];
    count += steps.length;
    return { string, steps };
  });
}
