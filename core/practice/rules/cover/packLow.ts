import type { Finding } from '../../../base/finding.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { roundDepth } from '../../../model/range.ts';
import { figureOf, judged, type JudgedWell, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isPack, runsOf, zonesRound } from './annulusRuns.ts';
import { judgeScreens } from './judgeScreens.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';

/** Finds how far the pack that stands at the top slot of a screen goes on above it. */
function checkScreen(well: JudgedWell, { fromM: screenM, string }: ScreenRun): Finding[] {
  const pack = runsOf(zonesRound(well.model, string), isPack).find(
    ({ fromM, toM }) =>
      fromM - screenM <= tapeToleranceM && toM > roundDepth(screenM + tapeToleranceM),
  );
  if (!pack) return [];
  const aboveM = Math.max(0, roundDepth(screenM - pack.fromM));
  const wantedM = figureOf(well, 'packAboveScreenM');
  const graveM = figureOf(well, 'packAboveScreenGraveM');
  if (aboveM >= wantedM) return [];
  return [
    broken(
      'pack.low',
      aboveM < graveM ? 'error' : 'warning',
      pack.zones[0].path ?? 'annulus',
      { aboveM, screenM, wantedM, graveM },
      { fromM: screenM - aboveM, toM: screenM },
    ),
  ];
}

/**
 * The pack goes on above the top slot, since it settles while the well is developed. Where no
 * pack stands at the slot, `pack.bare` speaks.
 */
export const packLow: Rule = {
  id: 'pack.low',
  figures: ['packAboveScreenM', 'packAboveScreenGraveM'],
  judge: (well) =>
    judgeScreens(well, (screens) => judged(screens.flatMap((screen) => checkScreen(well, screen)))),
};
