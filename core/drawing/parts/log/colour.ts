import type { Stratum } from '../../../model/wellModel.ts';
import type { Ink, Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import type { View } from '../columns.ts';
import { drawRanged, joinedRanges, type Ranged } from './rangedWords.ts';
import { saidOf } from './said.ts';
import { tintOf } from './tints.ts';

/** The tint of each colour, found once for all strata that have it. */
function tintFinder(): (colour: string) => Ink {
  const found = new Map<string, Ink>();
  return (colour) => {
    const tint = found.get(colour) ?? tintOf(colour);
    found.set(colour, tint);
    return tint;
  };
}

/** Colours as they were written, neighbours of one colour together. */
export function colourWords(strata: readonly Stratum[]): Ranged[] {
  const tintFor = tintFinder();
  const each = strata.flatMap((stratum) => {
    const said = saidOf(stratum, 'colour');
    const text = said?.value.trim() ?? '';
    if (!said || text === '') return [];
    const { fromM, toM } = stratum;
    return [{ fromM, toM, text, source: said.source, tint: tintFor(text) }];
  });
  return joinedRanges(each);
}

/** Colours as named chips: a box in a light tint, outlined, with the word that was written. */
export function drawColour(kit: Kit, colours: readonly Ranged[], view: View): Item {
  return drawRanged(kit, 'colour', colours, view.columns.colour, view);
}
