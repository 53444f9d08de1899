import type { DepthM } from '../../../core/base/units.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';

/** Metres: the thinnest that a part can be dragged to. */
export const thinnestM = 0.01;
/** Metres that a level or a casing may be dragged above ground. */
export const aboveGroundM = 10;
/** Metres beyond all that is known of a well where nothing else holds an edge. */
const beyondM = 100;

function deepestOf({ bore, strata, strings, annulus }: WellModel): DepthM {
  const depths = [
    bore.depthM ?? 0,
    ...strata.map(({ toM }) => toM),
    ...strings.map(({ bottomM }) => bottomM),
    ...annulus.map(({ toM }) => toM),
  ];
  return Math.max(...depths);
}

/** How deep an edge may be dragged where nothing stands below it. */
export function openEndM(model: WellModel): DepthM {
  return deepestOf(model) + beyondM;
}

/** The foot of the hole for what must stand in it, unless it stands deeper already. */
export function inHoleM(model: WellModel, depthM: DepthM): DepthM {
  const footM = model.bore.depthM;
  return footM !== undefined && depthM <= footM ? footM : openEndM(model);
}
