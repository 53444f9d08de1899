import { judged, notApplicable, unjudged, type JudgedWell, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isUnrecorded, zoneAbove, zoneBelow, type Run } from './annulusRuns.ts';
import { judgeFills } from './judgeScreens.ts';
import { sanitarySealOf, sealLimitsOf, untoldIn } from './sanitarySeal.ts';
import { wallZones } from './wall.ts';

/** Unrecorded stretches that may hold the part of the seal that is wanting. */
function untoldBeside(
  { model }: JudgedWell,
  { fromM, toM, zones }: Run,
  lowTop: boolean,
  highFoot: boolean,
) {
  const wall = wallZones(model);
  const said = zones.some(({ sanitary }) => sanitary);
  const beside = [
    lowTop ? zoneAbove(wall, fromM) : undefined,
    // A fill that the record calls the seal ends where it is said to end.
    highFoot && !said ? zoneBelow(wall, toM) : undefined,
  ];
  return untoldIn(beside.filter((zone) => zone !== undefined).filter(isUnrecorded));
}

/** The sanitary seal begins near the ground and reaches deep enough. */
export const sealShort: Rule = {
  id: 'seal.short',
  figures: ['sanitarySealFromM', 'sanitarySealToM'],
  judge: (well) =>
    judgeFills(well, () => {
      const limits = sealLimitsOf(well);
      const { startM, wantedM } = limits;
      const seal = sanitarySealOf(well.model, limits);
      if (!seal) return notApplicable;
      const { fromM, toM, zones } = seal;
      const [lowTop, highFoot] = [fromM > startM, toM < wantedM];
      if (!lowTop && !highFoot) return judged([]);
      const untold = untoldBeside(well, seal, lowTop, highFoot);
      if (untold.length > 0) return unjudged(...untold);
      const path = zones[0].path ?? 'annulus';
      return judged([broken('seal.short', 'warning', path, { startM, wantedM }, { fromM, toM })]);
    }),
};
