import { describe, expect, it } from 'vitest';
import { dryLevel } from '../../../../../core/practice/rules/casing/dryLevel.ts';
import {
  casing,
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  plain,
  say,
  type Chapters,
} from './wells.ts';

const dryAt = (drySeasonLevel: number): Chapters => ({ layingOut: { drySeasonLevel } });

const restAt = (reading: number): Chapters => ({
  layingOut: {},
  levels: [{ reading, datum: 'ground', state: 'static' }],
});

describe('the rule of the dry season', () => {
  it('finds a screen that begins above the level of the dry season', () => {
    expect(say(dryLevel, dryAt(23)).findings).toMatchObject([
      {
        code: 'screened.dry',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, levelM: 23, limitM: 23 },
      },
    ]);
  });

  it('is graver where all of it stands above', () => {
    expect(say(dryLevel, dryAt(28.5)).findings).toMatchObject([{ severity: 'error' }]);
    expect(say(dryLevel, dryAt(28.4)).findings).toMatchObject([{ severity: 'warning' }]);
  });

  it('is met by a screen that begins at the level', () => {
    expect(say(dryLevel, dryAt(22.5))).toEqual(met);
  });

  it('condemns by a rest level alone, but does not clear by it', () => {
    expect(say(dryLevel, restAt(22.6)).findings).toMatchObject([{ values: { levelM: 22.6 } }]);
    expect(misses(dryLevel, restAt(8))).toEqual(['dryLevel layingOut.drySeasonLevel']);
    expect(misses(dryLevel, { layingOut: {}, levels: [] })).toEqual([
      'dryLevel layingOut.drySeasonLevel',
    ]);
  });

  it('passes by casing without a screen and a well that gives no water', () => {
    expect(say(dryLevel, { ...dryAt(25), ...casing(plain) })).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(dryLevel, { ...dryAt(25), ...inState(state) })).toEqual(passedBy);
  });
});
