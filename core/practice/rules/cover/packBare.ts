import type { Finding, Severity } from '../../../base/finding.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { cut } from '../../../model/range.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
import { judged, type JudgedWell, type Missing, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isPack, isSeal, zonesRound } from './annulusRuns.ts';
import { firmnessAlong, type Firmness } from './firmness.ts';
import { judgeScreens } from './judgeScreens.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';

/** A stretch of screen at which something else than pack stands. */
interface Bare {
  readonly zone: AnnulusZone;
  readonly stretch: { readonly fromM: number; readonly toM: number };
}

function bareOf({ model }: JudgedWell, screen: ScreenRun): Bare[] {
  return zonesRound(model, screen.string)
    .filter((zone) => !isPack(zone))
    .flatMap((zone) => {
      const stretch = cut(zone, screen.fromM, screen.toM);
      return stretch && stretch.toM - stretch.fromM > tapeToleranceM ? [{ zone, stretch }] : [];
    });
}

const byGround: Readonly<Record<Firmness, Severity | undefined>> = {
  rock: 'note',
  loose: 'error',
  unknown: undefined,
};

/** How grave it is; undefined where it hangs on ground that nobody logged. */
function severityOf({ model }: JudgedWell, { zone, stretch }: Bare): Severity | undefined {
  if (isSeal(zone)) return 'error';
  if (zone.fill === 'naturalCollapse') return 'note';
  return byGround[firmnessAlong(model.strata, stretch)];
}

function checkBare(well: JudgedWell, bare: Bare): Finding[] {
  const { zone, stretch } = bare;
  const severity = severityOf(well, bare);
  if (zone.fill === 'unrecorded' || !severity) return [];
  return [broken('pack.bare', severity, zone.path ?? 'annulus', { fill: zone.fill }, stretch)];
}

function missingOf(well: JudgedWell, bare: Bare): Missing[] {
  if (bare.zone.fill === 'unrecorded') return [{ what: 'fills', path: 'annulus', ...bare.stretch }];
  return severityOf(well, bare) ? [] : [{ what: 'log', path: 'log', ...bare.stretch }];
}

/**
 * Pack stands along the whole of each screen. In rock that stands by itself, and where the ground
 * was let fall in, its want is worth a note only. Common practice.
 */
export const packBare: Rule = {
  id: 'pack.bare',
  figures: [],
  judge: (well) =>
    judgeScreens(well, (screens) => {
      const bare = screens.flatMap((screen) => bareOf(well, screen));
      return judged(
        bare.flatMap((one) => checkBare(well, one)),
        bare.flatMap((one) => missingOf(well, one)),
      );
    }),
};
