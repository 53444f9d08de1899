import type { AnnulusFill } from '../annulus.ts';
import { phrase } from '../phrases/phrase.ts';
import type { WellRecord } from '../schema.ts';
import { troubleAt, type Trouble } from '../trouble.ts';
import { notLess } from './figure.ts';

function checkAround(path: string, { around, insideHole }: AnnulusFill): Trouble[] {
  if (around === undefined || !insideHole) return [];
  return [troubleAt(`${path}.around`, phrase('noStringInside', { around }))];
}

/** Fills that say two things of where they stand, or whose grains stand the wrong way round. */
export function checkFills({ annulus }: WellRecord): Trouble[] {
  return (annulus ?? []).flatMap((fill, at) => {
    const path = `annulus[${at}]`;
    return [
      ...checkAround(path, fill),
      ...notLess(
        { path: `${path}.grainMax`, value: fill.grainMax },
        { path: `${path}.grainMin`, value: fill.grainMin },
        'finerThan',
      ),
    ];
  });
}
