import { describe, expect, it } from 'vitest';
import { entranceVelocity } from '../../../../../core/practice/rules/casing/entranceVelocity.ts';
import {
  cap,
  casing,
  closedStates,
  inState,
  met,
  misses,
  passedBy,
  plain,
  say,
  screen,
  sump,
  type Chapters,
} from './wells.ts';

const wide = { outside: 125, wall: 4.8 };

/** A rate through 6 m of 125 mm screen that is open over 4 %. */
const through = (rate: number, changed: Chapters = {}): Chapters => ({
  ...casing(cap, sump, { ...screen, ...wide, openArea: 4 }, plain),
  layingOut: { rate, drySeasonLevel: 9, drawdown: 2 },
  ...changed,
});

/** The rate in m³/h at which half of those slots carry 0.03 m/s. */
const limit = 0.03 * 3600 * 0.5 * Math.PI * 0.125 * 6 * 0.04;

describe('the rule of entrance velocity', () => {
  // TM 5-813-1's limit of 0.03 m/s, half the slots blocked (Driscoll 1986, from memory):
  // 5.4 m³/h through 6 m of 125 mm, 4 % open, make 0.0318 m/s.
  it('finds water that goes too fast', () => {
    const { findings } = say(entranceVelocity, through(5.4));
    expect(findings).toMatchObject([
      {
        code: 'screened.velocity',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { rate: 5.4, screenM: 6, most: 3 },
      },
    ]);
    expect(findings[0]?.values['speed']).toBeCloseTo(3.18, 2);
  });

  it('is met just at the limit', () => {
    expect(say(entranceVelocity, through(limit))).toEqual(met);
    expect(say(entranceVelocity, through(limit * 1.01)).findings).toHaveLength(1);
  });

  it('counts only screen under the pumping level', () => {
    const deep = { layingOut: { rate: limit, drySeasonLevel: 20, drawdown: 5.5 } };
    expect(say(entranceVelocity, through(limit, deep)).findings).toMatchObject([
      { values: { screenM: 3 } },
    ]);
  });

  it('condemns without a pumping level, but does not clear', () => {
    const unknown = (rate: number): Chapters => ({ layingOut: { rate }, levels: [] });
    expect(say(entranceVelocity, through(1, unknown(6))).findings).toHaveLength(1);
    expect(misses(entranceVelocity, through(1, unknown(1)))).toEqual([
      'pumpingLevel layingOut.drawdown',
    ]);
  });

  it('cannot tell without rate, diameter or open area', () => {
    expect(misses(entranceVelocity, through(1, { layingOut: {} }))).toEqual([
      'designRate layingOut.rate',
    ]);
    const bare = casing(cap, sump, { kind: 'screen', length: 6 }, plain);
    expect(misses(entranceVelocity, through(1, bare))).toEqual([
      'pipeDiameter strings[0].components[2].outside',
      'openArea strings[0].components[2].openArea',
    ]);
  });

  it('takes the rate of the pump where none was laid out', () => {
    const pumped: Chapters = { layingOut: { drySeasonLevel: 9, drawdown: 2 }, pump: { rate: 6 } };
    expect(say(entranceVelocity, through(1, pumped)).findings).toHaveLength(1);
  });

  it('passes by casing without a screen and a well that gives no water', () => {
    expect(say(entranceVelocity, casing(plain))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(entranceVelocity, through(9, inState(state)))).toEqual(passedBy);
  });
});
