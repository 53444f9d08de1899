import type { RecordPath } from '../../../base/recordPath.ts';
import type { Millimetres } from '../../../base/units.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { roundDepth, type Range } from '../../../model/range.ts';
import type { StringModel } from '../../../model/wellModel.ts';

/** Screens of a string that follow on each other without plain pipe between. */
export interface Screen extends Range {
  /** Index of the string. */
  readonly string: number;
  /** The uppermost piece. */
  readonly path: RecordPath;
}

/** Outside diameter under which a pipe holds no pump, not even a driven point's; common practice. */
const pumpedLeastMm: Millimetres = 40;

/** A pipe for a tape or a gauge only, as in a piezometer: its pack need not settle. */
export function isObservationPipe({ pieces }: StringModel): boolean {
  return pieces.some(
    ({ kind, outsideMm }) => kind === 'screen' && (outsideMm ?? pumpedLeastMm) < pumpedLeastMm,
  );
}

/** The screens of a string from the top down, each without its end in the piece below. */
export function screensOf({ index, pieces }: StringModel): Screen[] {
  const screens: Screen[] = [];
  for (const { kind, topM, bottomM, insertionM, path } of pieces) {
    if (kind !== 'screen') continue;
    const toM = roundDepth(bottomM - insertionM);
    const last = screens.at(-1);
    if (last && topM - last.toM <= tapeToleranceM) screens[screens.length - 1] = { ...last, toM };
    else screens.push({ fromM: topM, toM, string: index, path });
  }
  return screens;
}
