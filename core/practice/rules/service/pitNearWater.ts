import type { Severity } from '../../../base/finding.ts';
import { roundDepth } from '../../../model/range.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { DepthM } from '../../../base/units.ts';
import type { Surrounding } from '../../../record/site.ts';
import { figureOf, judged, notApplicable, unjudged, type Missing, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { stageOf } from '../stage.ts';

interface Pit {
  readonly one: Surrounding;
  readonly path: string;
}

/** Latrines are asked for their base; other pits are judged where it was written. */
function pitsOf(surroundings: readonly Surrounding[]): Pit[] {
  return surroundings
    .map((one, row) => ({ one, path: `site.surroundings[${row}].pitBase` }))
    .filter(({ one }) => one.kind === 'latrine' || one.pitBase !== undefined);
}

/** Water rises again after the day of a reading, so the highest rest level counts. */
function highestRestM({ levels }: WellModel): DepthM | undefined {
  const rest = levels.filter(({ state }) => state === 'static').map(({ depthM }) => depthM);
  return rest.length === 0 ? undefined : Math.min(...rest);
}

/**
 * The base of a pit stays above the water in the ground. Heights of the ground are not recorded,
 * so the pit is taken as dug from the well's ground level. A pit within the distance that is asked
 * of latrines is a warning, one beyond it a note, as is one uphill, whose base may stand higher.
 */
export const pitNearWater: Rule = {
  id: 'pit.nearWater',
  figures: ['pitAboveWaterM', 'latrineM'],
  judge(well) {
    if (stageOf(well.record) === 'closed') return notApplicable;
    const surroundings = well.record.site?.surroundings ?? [];
    if (surroundings.length === 0)
      return unjudged({ what: 'surroundings', path: 'site.surroundings' });
    const pits = pitsOf(surroundings);
    if (pits.length === 0) return notApplicable;
    const unmeasured = pits
      .filter(({ one }) => one.pitBase === undefined)
      .map(({ path }): Missing => ({ what: 'pitBase', path }));
    const restM = highestRestM(well.model);
    if (restM === undefined) return unjudged({ what: 'restLevel', path: 'levels' }, ...unmeasured);
    const limitM = figureOf(well, 'pitAboveWaterM');
    const farM = figureOf(well, 'latrineM');
    const findings = pits.flatMap(({ one, path }) => {
      const { pitBase: baseM, distance, slope } = one;
      if (baseM === undefined || roundDepth(restM - baseM) >= limitM) return [];
      const isFar = distance !== undefined && distance >= farM;
      const severity: Severity = isFar || slope === 'uphill' ? 'note' : 'warning';
      return [broken('pit.nearWater', severity, path, { baseM, restM, limitM })];
    });
    return judged(findings, unmeasured);
  },
};
