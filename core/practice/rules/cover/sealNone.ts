import { judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isSeal } from './annulusRuns.ts';
import { judgeFills } from './judgeScreens.ts';
import { sanitarySealOf, sealLimitsOf, untoldIn, upperZones } from './sanitarySeal.ts';

/**
 * Some clay, bentonite, grout or concrete stands next to the wall near the ground, and more than
 * the collar of a pad. What stands there instead is named, also where it is an open annulus.
 */
export const sealNone: Rule = {
  id: 'seal.none',
  figures: ['sanitarySealFromM', 'sanitarySealToM'],
  judge: (well) =>
    judgeFills(well, () => {
      const limits = sealLimitsOf(well);
      const { wantedM } = limits;
      if (sanitarySealOf(well.model, limits)) return judged([]);
      const zones = upperZones(well.model, wantedM);
      const first = zones.find((zone) => !isSeal(zone));
      const untold = untoldIn(zones);
      if (!first) return unjudged({ what: 'fills', path: 'annulus', fromM: 0, toM: wantedM });
      if (untold.length > 0) return unjudged(...untold);
      const { fill, path = 'annulus' } = first;
      return judged([
        broken('seal.none', 'error', path, { fill, wantedM }, { fromM: 0, toM: wantedM }),
      ]);
    }),
};
