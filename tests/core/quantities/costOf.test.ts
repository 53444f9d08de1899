import { describe, expect, it } from 'vitest';
import type { Practice } from '../../../core/practice/practice.ts';
import { costOf } from '../../../core/quantities/costOf.ts';
import { cased, practiceWith, reckon, valueOf } from './reckoned.ts';

const reckoned = reckon(
  cased(
    165,
    110,
    12,
    { from: 0, to: 3, fill: 'cementGrout' },
    { from: 3, to: 12, fill: 'gravelPack' },
  ),
);

function priced(prices: Practice['prices']): Practice {
  return { ...practiceWith(), currency: 'crowns', prices };
}

describe('costs', () => {
  it('are none where the practice has no prices', () => {
    expect(costOf(reckoned, practiceWith())).toBeUndefined();
  });

  it('are amounts times prices, cement of grout and concrete together', () => {
    const costs = costOf(
      reckoned,
      priced({ cementSack: { each: 9.5, per: 'sack' }, plainM: { each: 4, per: 'm' } }),
    )!;
    const sacks =
      valueOf(reckoned, 'groutCementSacks')! + valueOf(reckoned, 'concreteCementSacks')!;
    expect(costs.currency).toBe('crowns');
    expect(costs.lines.map(({ key, amount, cost }) => [key, amount, cost])).toEqual([
      ['cementSack', sacks, sacks * 9.5],
      ['plainM', 12, 48],
    ]);
    expect(costs.sum).toBe(sacks * 9.5 + 48);
  });

  it('take cubic metres of what is told in litres', () => {
    const { lines } = costOf(reckoned, priced({ sandM3: { each: 20, per: 'm³' } }))!;
    expect(lines[0]!.amount).toBeCloseTo(valueOf(reckoned, 'concreteSandLitres')! / 1000, 9);
  });

  it('name what has no price', () => {
    const { unpriced } = costOf(reckoned, priced({ gravelSack: { each: 3, per: 'sack' } }))!;
    expect(unpriced).toContain('cementSack');
    expect(unpriced).not.toContain('gravelSack');
    expect(unpriced).not.toContain('screenM');
  });

  it('name the groups that could not be reckoned in whole', () => {
    const practice = priced({ gravelSack: { each: 3, per: 'sack' } });
    const whole = reckon({
      ...cased(165, 110, 12, { from: 0, to: 12, fill: 'gravelPack' }),
      bore: { method: 'mudRotary', depthReached: 12 },
    });
    expect(costOf(whole, practice)!.incomplete).toContain('gravel');
    expect(costOf(reckoned, practice)!.incomplete).not.toContain('gravel');
  });
});
