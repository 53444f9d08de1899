import type { Finding } from '../../../base/finding.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { cut, gapsIn, roundDepth, type Range } from '../../../model/range.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
import { figureOf, judged, type JudgedWell, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isSeal, runsOf } from './annulusRuns.ts';
import { firmnessAlong } from './firmness.ts';
import { judgeFills } from './judgeScreens.ts';
import { screenRuns } from '../../../model/screenRuns.ts';
import { wallZones } from './wall.ts';

/** Where water goes in: the screens, or what is below the deepest pipe. */
function intakesOf({ model }: JudgedWell): Range[] {
  const screens = model.strings.flatMap(screenRuns);
  if (screens.length > 0) return screens;
  const footM = Math.max(...model.strings.map(({ bottomM }) => bottomM));
  return [{ fromM: footM, toM: Math.max(footM, model.bore.depthM ?? footM) }];
}

/** True where clay or grout still parts an open stretch from the next intake below it. */
function partedBelow(well: JudgedWell, { toM }: Range, intakes: readonly Range[]): boolean {
  const next = Math.min(...intakes.map(({ fromM }) => fromM).filter((fromM) => fromM >= toM));
  return runsOf(wallZones(well.model), isSeal).some(
    (seal) =>
      seal.fromM >= toM - tapeToleranceM &&
      seal.toM <= next + tapeToleranceM &&
      roundDepth(seal.toM - seal.fromM) >= figureOf(well, 'clayOnPackM'),
  );
}

function checkZone(well: JudgedWell, zone: AnnulusZone): Finding[] {
  const intakes = intakesOf(well);
  const lowestM = Math.max(...intakes.map(({ fromM }) => fromM));
  const part = cut(zone, figureOf(well, 'sanitarySealToM'), lowestM);
  if (!part) return [];
  return gapsIn(intakes, part.fromM, part.toM)
    .filter(({ fromM, toM }) => toM - fromM > tapeToleranceM)
    .map((stretch) => {
      const stands = firmnessAlong(well.model.strata, stretch) === 'rock';
      const harmless = stands || partedBelow(well, stretch, intakes);
      return broken(
        'open.above',
        harmless ? 'note' : 'warning',
        zone.path ?? 'annulus',
        {},
        stretch,
      );
    });
}

/**
 * No annulus is left open above where water goes in, below the sanitary seal's depth; above that
 * the rules on the seal speak. In rock, and where clay or grout stands between, it is worth a
 * note only. Common practice.
 */
export const openAbove: Rule = {
  id: 'open.above',
  figures: ['sanitarySealToM', 'clayOnPackM'],
  judge: (well) =>
    judgeFills(well, () =>
      judged(
        wallZones(well.model)
          .filter(({ fill, around }) => fill === 'open' && around !== undefined)
          .flatMap((zone) => checkZone(well, zone)),
      ),
    ),
};
