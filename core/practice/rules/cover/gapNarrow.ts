import type { Finding, Severity } from '../../../base/finding.ts';
import type { AnnulusZone, Ring } from '../../../model/wellModel.ts';
import { figureOf, judged, notApplicable, type JudgedWell, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isPack, zonesRound } from './annulusRuns.ts';
import { judgeFills } from './judgeScreens.ts';
import { screenRuns } from '../../../model/screenRuns.ts';
import { isObservationPipe } from './observationPipe.ts';
import { untoldRound } from './untoldFills.ts';
import { untoldSizes } from './untoldSizes.ts';

const perMm = 1e6;

/** Half the difference of two diameters, to the nanometre, so that 20 mm are 20 mm. */
function gapMm({ outerMm, innerMm }: Ring): number {
  return Math.round(((outerMm - innerMm) / 2) * perMm) / perMm;
}

/** Too narrow to pour pack: grave as long as hole or pipe can still be changed. */
function severityOf({ record }: JudgedWell, grave: boolean): Severity {
  if (!grave) return 'note';
  const state = record.identity?.state;
  return state === 'laidOut' || state === 'drilled' ? 'error' : 'warning';
}

function checkZone(well: JudgedWell, { rings, path = 'annulus' }: AnnulusZone): Finding[] {
  const wantedMm = figureOf(well, 'annulusGapMm');
  const graveMm = figureOf(well, 'annulusGapGraveMm');
  const narrow = rings.filter((ring) => ring.innerMm > 0 && gapMm(ring) < wantedMm);
  const [first] = narrow;
  if (!first) return [];
  const least = narrow.reduce((one, other) => (gapMm(other) < gapMm(one) ? other : one));
  const values = {
    gapMm: gapMm(least),
    holeMm: least.outerMm,
    pipeMm: least.innerMm,
    wantedMm,
    graveMm,
  };
  const stretch = { fromM: first.fromM, toM: narrow.at(-1)!.toM };
  const severity = severityOf(well, gapMm(least) < graveMm);
  return [broken('gap.narrow', severity, path, values, stretch)];
}

/** Pack has room to be poured and to stand evenly round the pipe. */
export const gapNarrow: Rule = {
  id: 'gap.narrow',
  figures: ['annulusGapMm', 'annulusGapGraveMm'],
  judge: (well) =>
    judgeFills(well, () => {
      const { model } = well;
      const pumped = model.strings.filter((string) => !isObservationPipe(string));
      const packs = pumped.flatMap(({ index }) => zonesRound(model, index)).filter(isPack);
      const missing = [
        ...untoldRound(model, pumped.flatMap(screenRuns)),
        ...packs.flatMap((zone) => untoldSizes(model, zone)),
      ];
      if (packs.length === 0 && missing.length === 0) return notApplicable;
      return judged(
        packs.flatMap((zone) => checkZone(well, zone)),
        missing,
      );
    }),
};
