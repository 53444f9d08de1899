import { tapeToleranceM } from '../../../model/bore.ts';
import { cut } from '../../../model/range.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { Missing } from '../rule.ts';
import { isUnrecorded, zonesRound } from './annulusRuns.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';

/** Stretches of screens round which nobody wrote what stands: there may be a pack. */
export function untoldRound(model: WellModel, screens: readonly ScreenRun[]): Missing[] {
  return screens.flatMap((screen) =>
    zonesRound(model, screen.string)
      .filter(isUnrecorded)
      .flatMap((zone) => cut(zone, screen.fromM, screen.toM) ?? [])
      .filter(({ fromM, toM }) => toM - fromM > tapeToleranceM)
      .map((part) => ({ what: 'fills', path: 'annulus', ...part })),
  );
}
