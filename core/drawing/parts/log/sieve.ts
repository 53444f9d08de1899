import type { Stratum } from '../../../model/wellModel.ts';
import { sizeFiner } from '../../../practice/reading/sieve.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import type { View } from '../columns.ts';
import { drawRanged, type Ranged } from './rangedWords.ts';
import { saidOf } from './said.ts';

/** Sizes of which 10 and 60 per cent are finer, mm; a dash for one that the curve does not reach. */
export function sieveWords(kit: Kit, strata: readonly Stratum[]): Ranged[] {
  return strata.flatMap((stratum) => {
    const said = saidOf(stratum, 'sieve');
    if (!said || said.value.length === 0) return [];
    const sizes = [10, 60].map((percent) => sizeFiner(said.value, percent));
    const text = sizes.map((mm) => (mm === undefined ? '–' : plainFigure(kit, mm, 2))).join(' ');
    return [{ fromM: stratum.fromM, toM: stratum.toM, text, source: said.source }];
  });
}

/** What sieve curves of the log tell, each beside the stratum that was sieved. */
export function drawSieve(kit: Kit, words: readonly Ranged[], view: View): Item {
  return drawRanged(kit, 'sieve', words, view.columns.sieve, view);
}
