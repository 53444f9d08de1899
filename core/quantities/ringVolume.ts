import type { Ring } from '../model/wellModel.ts';
import { counted, fromModel } from './inputs.ts';
import type { QuantityInput } from './quantity.ts';
import type { Reckoning } from './reckon.ts';
import { sources } from './sources.ts';

function measures({ outerMm, innerMm, fromM, toM }: Ring, name: (symbol: string) => string) {
  const inner: QuantityInput[] = innerMm === 0 ? [] : [fromModel(name('d'), innerMm, 'mm')];
  return [fromModel(name('D'), outerMm, 'mm'), ...inner, fromModel(name('L'), toM - fromM, 'm')];
}

/** How the litres of rings are found, by the diameters and lengths of each; d is left out where it is 0. */
export function ringVolume(rings: readonly Ring[]): Reckoning {
  const [first] = rings;
  const one = rings.length === 1 && first !== undefined;
  const full = rings.every(({ innerMm }) => innerMm === 0);
  const i = one ? '' : 'ᵢ';
  const area = full ? `D${i}²` : `(D${i}² − d${i}²)`;
  return {
    formula: `V = ${one ? '' : 'Σ '}π/4 · ${area} · L${i}`,
    inputs: rings.flatMap((ring, at) =>
      measures(ring, (symbol) => (one ? symbol : counted(symbol, at + 1))),
    ),
    source: sources.geometry,
  };
}
