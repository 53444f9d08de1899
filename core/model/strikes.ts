import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { Strike } from '../record/water.ts';
import { found, type Resolved } from './findings.ts';
import type { StrikeModel } from './wellModel.ts';

function checkStrike({ depthM, riseM, path }: StrikeModel, holeM: DepthM | undefined): Finding[] {
  const at = { fromM: depthM };
  const findings: Finding[] = [];
  if (depthM < 0) findings.push(found('strike.aboveGround', path, { heightM: -depthM }, at));
  if (holeM !== undefined && depthM > holeM)
    findings.push(found('strike.belowHole', path, { strikeM: depthM, depthM: holeM }, at));
  if (riseM !== undefined && riseM > depthM)
    findings.push(found('strike.riseBelow', `${path}.rise`, { strikeM: depthM, riseM }, at));
  return findings;
}

/** The water strikes as they were written, with what contradicts the hole. */
export function resolveStrikes(
  strikes: readonly Strike[],
  holeM: DepthM | undefined,
): Resolved<StrikeModel[]> {
  const value = strikes.map(({ depth, rise }, at) => ({
    depthM: depth,
    ...(rise === undefined ? {} : { riseM: rise }),
    path: `strikes[${at}]`,
  }));
  return { value, findings: value.flatMap((strike) => checkStrike(strike, holeM)) };
}
