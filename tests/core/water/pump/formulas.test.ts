import { describe, expect, it } from 'vitest';
import type { PumpQuantity } from '../../../../core/water/pump/ranking.ts';
import { ranked, wellWithDryLevel } from './wells.ts';

/** The value of a quantity as its own formula and inputs give it, in the units that they bear. */
function evaluate({ formula, inputs }: PumpQuantity): number {
  const [, sign, right = ''] = /^\w+ (=|≤) (.+)$/.exec(formula) ?? [];
  const given = new Map(inputs.map(({ symbol, value }) => [symbol, value]));
  const code = right
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replace(/[A-Za-zηεν]\w*/gu, (symbol) => {
      if (symbol === 'min' || symbol === 'max') return `Math.${symbol}`;
      const value = given.get(symbol);
      if (value === undefined) throw new Error(`${formula}: nothing is told of ${symbol}.`);
      return `(${value})`;
    });
  const value = Number(new Function(`return ${code};`)());
  return sign === '≤' ? Math.floor(value + 1e-9) : value;
}

describe('a quantity', () => {
  const rankings = [3, 12, 20, 28].map((dry) => ranked(wellWithDryLevel(dry)));
  const all = rankings.flatMap(({ kinds, quantities }) => [
    ...quantities,
    ...kinds.flatMap((one) => one.quantities),
  ]);

  it('is what its own formula gives with its inputs', () => {
    // That of friction has a factor of its own, which is held against Colebrook elsewhere.
    for (const quantity of all.filter(({ id }) => id !== 'frictionM'))
      expect(evaluate(quantity), `${quantity.id}: ${quantity.formula}`).toBeCloseTo(
        quantity.value,
        6,
      );
  });

  it('tells every input of its formula, and where it comes from', () => {
    for (const { inputs } of all) {
      expect(inputs.length).toBeGreaterThan(0);
      expect(new Set(inputs.map(({ symbol }) => symbol)).size).toBe(inputs.length);
    }
  });
});
