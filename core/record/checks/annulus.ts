import type { AnnulusFill } from '../annulus.ts';
import type { WellRecord } from '../schema.ts';
import { troubleAt, type Trouble } from '../trouble.ts';
import { notLess } from './figure.ts';

function checkAround(path: string, fill: AnnulusFill, strings: number): Trouble[] {
  const { around, insideHole } = fill;
  if (around === undefined) return [];
  if (insideHole)
    return [troubleAt(`${path}.around`, `${around} names a string, yet the fill has none inside`)];
  if (around < strings) return [];
  const known = strings === 0 ? 'the record has none' : `the record has 0 to ${strings - 1}`;
  return [troubleAt(`${path}.around`, `${around} points at no string; ${known}`)];
}

/** Fills that point at no string, or whose grains stand the wrong way round. */
export function checkFills({ annulus, strings }: WellRecord): Trouble[] {
  return (annulus ?? []).flatMap((fill, at) => {
    const path = `annulus[${at}]`;
    return [
      ...checkAround(path, fill, strings?.length ?? 0),
      ...notLess(
        { path: `${path}.grainMax`, value: fill.grainMax },
        { path: `${path}.grainMin`, value: fill.grainMin },
        'finer than',
      ),
    ];
  });
}
