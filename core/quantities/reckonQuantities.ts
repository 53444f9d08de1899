import type { WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';
import { reckonClay } from './groups/clay.ts';
import { reckonConcrete } from './groups/concrete.ts';
import { reckonGravel } from './groups/gravel.ts';
import { reckonGrout } from './groups/grout.ts';
import { reckonLoad } from './groups/load.ts';
import { reckonMud } from './groups/mud.ts';
import { reckonPipes } from './groups/pipes.ts';
import { reckonVolumes } from './groups/volumes.ts';
import { reckonWater } from './groups/water.ts';
import { groupIds, type Quantities } from './quantity.ts';
import { eachOnce } from './reckon.ts';

/**
 * What a well takes in material, water and trips, as laid out or as built: by the geometry of its
 * model and the factors of the practice. `model` is that of `record`. Never throws; what cannot be
 * reckoned is told as missing, and the whole that it belongs to is absent.
 */
export function reckonQuantities(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
): Quantities {
  const well = { record, model, practice };
  const parts = {
    gravel: reckonGravel(well),
    clay: reckonClay(well),
    grout: reckonGrout(well),
    mud: reckonMud(well),
    pipes: reckonPipes(well),
    concrete: reckonConcrete(well),
  };
  const groups = {
    volumes: reckonVolumes(well),
    ...parts,
    water: reckonWater(well, parts),
    load: reckonLoad(well, parts),
  };
  return {
    groups: groupIds.map((id) => ({
      id,
      quantities: groups[id].quantities,
      missing: eachOnce(groups[id].missing),
    })),
  };
}
