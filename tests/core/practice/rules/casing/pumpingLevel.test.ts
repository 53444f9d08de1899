import { describe, expect, it } from 'vitest';
import { pumpingLevel } from '../../../../../core/practice/rules/casing/pumpingLevel.ts';
import { closedStates, inState, met, misses, passedBy, say, type Chapters } from './wells.ts';

const drawdown = (metres: number): Chapters => ({
  layingOut: { rate: 1, drySeasonLevel: 9, drawdown: metres },
});

const pumpedTo = (reading: number, rate: number): Chapters => ({
  layingOut: { rate: 1 },
  levels: [
    { reading: 9, datum: 'ground', state: 'static' },
    { reading, datum: 'ground', state: 'pumping', rate },
  ],
});

describe('the rule of the pumping level', () => {
  it('finds a screen that the drawdown lays dry', () => {
    expect(say(pumpingLevel, drawdown(14)).findings).toMatchObject([
      {
        code: 'screened.pumping',
        severity: 'warning',
        path: 'strings[0].components[2]',
        values: { levelM: 23, limitM: 23 },
      },
    ]);
  });

  it('is met where the water just stays at its top', () => {
    expect(say(pumpingLevel, drawdown(13.5))).toEqual(met);
  });

  it('takes what was read while pumping at the rate or less', () => {
    expect(say(pumpingLevel, pumpedTo(23, 1)).findings).toHaveLength(1);
    expect(say(pumpingLevel, pumpedTo(12, 1))).toEqual(met);
  });

  it('clears by a level read at a higher rate, but does not condemn by it', () => {
    expect(say(pumpingLevel, pumpedTo(12, 3))).toEqual(met);
    expect(misses(pumpingLevel, pumpedTo(23, 3))).toEqual(['pumpingLevel layingOut.drawdown']);
  });

  it('leaves a screen above the rest level to the rule of the dry season', () => {
    const dry: Chapters = { layingOut: { rate: 1, drySeasonLevel: 25, drawdown: 1 } };
    expect(say(pumpingLevel, dry).findings).toEqual([]);
  });

  it('cannot tell without a drawdown and a pumping level', () => {
    expect(misses(pumpingLevel, { layingOut: { rate: 1 }, levels: [] })).toEqual([
      'pumpingLevel layingOut.drawdown',
    ]);
  });

  it('passes by a well that gives no water', () => {
    for (const state of closedStates)
      expect(say(pumpingLevel, { ...drawdown(15), ...inState(state) })).toEqual(passedBy);
  });
});
