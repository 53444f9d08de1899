import { cut, gapsIn, type Range } from '../../../model/range.ts';
import type { LogInterval } from '../../../record/log.ts';
import { soils, type Material } from '../../../record/materials.ts';
import type { Stratum } from '../../../model/wellModel.ts';

/** Whether the wall of the hole stands by itself. */
export type Firmness = 'rock' | 'loose' | 'unknown';

const untold: readonly (Material | undefined)[] = [undefined, 'noSample', 'other', 'cavity'];
const loose: readonly (Material | undefined)[] = [...soils, 'soil'];

/** Rock stands unless it is rotten; soils and what weathers to them fall in. Common practice. */
function firmnessOf({ material, weathering }: LogInterval): Firmness {
  if (untold.includes(material)) return 'unknown';
  if (loose.includes(material)) return 'loose';
  return weathering === 'highly' || weathering === 'completely' ? 'loose' : 'rock';
}

/** The least firm ground of a stretch; unknown where a part of it is not told and none is loose. */
export function firmnessAlong(strata: readonly Stratum[], { fromM, toM }: Range): Firmness {
  const there = strata.filter((stratum) => cut(stratum, fromM, toM));
  const kinds = there.map(({ interval }) => firmnessOf(interval));
  if (kinds.includes('loose')) return 'loose';
  return kinds.includes('unknown') || gapsIn(there, fromM, toM).length > 0 ? 'unknown' : 'rock';
}
