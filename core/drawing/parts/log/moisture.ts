import type { Stratum } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import type { View } from '../columns.ts';
import { drawRanged, joinedRanges, type Ranged } from './rangedWords.ts';
import { saidOf } from './said.ts';

/** How wet the ground came up, neighbours that are alike together. */
export function moistureWords(kit: Kit, strata: readonly Stratum[]): Ranged[] {
  const each = strata.flatMap((stratum) => {
    const said = saidOf(stratum, 'moisture');
    if (!said) return [];
    const { fromM, toM } = stratum;
    return [{ fromM, toM, text: kit.words.moisture[said.value], source: said.source }];
  });
  return joinedRanges(each);
}

export function drawMoisture(kit: Kit, words: readonly Ranged[], view: View): Item {
  return drawRanged(kit, 'moisture', words, view.columns.moisture, view);
}
