import { describe, expect, it } from 'vitest';
import { centralisers } from '../../../../../core/practice/rules/casing/centralisers.ts';
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

/** The good well with centralisers at these heights above the foot of each piece. */
const held = (onSump: number[], onScreen: number[], onPlain: number[]): Chapters =>
  casing(
    cap,
    { ...sump, centralisers: onSump },
    { ...screen, centralisers: onScreen },
    { ...plain, centralisers: onPlain },
  );

const none = held([], [], []);

describe('the rule of centralisers', () => {
  // About every 3 to 6 m, bottom and top of the screen: ICRC, AWWA A100 (from memory).
  it('finds two in the pack that stand too far apart', () => {
    expect(say(centralisers, held([0.5], [], [0.5])).findings).toMatchObject([
      {
        code: 'centraliser.spacing',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22,
        toM: 29.5,
        values: { string: 1, gapM: 7.5, mostM: 6 },
      },
    ]);
  });

  it('finds ends of screen and pack that none holds', () => {
    expect(say(centralisers, held([], [3], [])).findings).toMatchObject([
      { fromM: 20, toM: 25.5, values: { gapM: 5.5, mostM: 3 } },
    ]);
    expect(say(centralisers, held([], [3.1, 5], [])).findings).toMatchObject([
      { fromM: 20, toM: 23.5 },
      { fromM: 25.4, toM: 28.5, values: { gapM: 3.1, mostM: 3 } },
    ]);
  });

  it('is met just at the limit', () => {
    expect(say(centralisers, held([], [3], [0, 6]))).toEqual(met);
    expect(say(centralisers, held([1], [], [0.5]))).toMatchObject({
      findings: [{ values: { gapM: 7 } }],
    });
    expect(say(centralisers, held([0.5], [5], [4]))).toEqual(met);
  });

  it('says a gap across two packs once, and nothing of plain pipe above the pack', () => {
    const two: Chapters = {
      annulus: [
        { from: 20, to: 24, fill: 'gravelPack' },
        { from: 24, to: 24.5, fill: 'claySeal' },
        { from: 24.5, to: 30, fill: 'gravelPack' },
      ],
    };
    expect(say(centralisers, { ...held([1], [], [1]), ...two }).findings).toHaveLength(1);
    expect(say(centralisers, held([1], [3], [0.5, 18]))).toEqual(met);
    // The next one above the pack stands far off; its top at 20 m is 3.5 m from the one below.
    expect(say(centralisers, held([1], [5], [18]))).toMatchObject({
      findings: [{ fromM: 4.5, toM: 23.5, values: { gapM: 19, mostM: 6 } }],
    });
  });

  it('finds a plan without any, and cannot tell of a well that has none written', () => {
    expect(say(centralisers, { ...none, ...inState('laidOut') }).findings).toMatchObject([
      { fromM: 20, toM: 28.5 },
    ]);
    expect(misses(centralisers, none)).toEqual(['centralisers strings[0]']);
  });

  it('cannot tell without fills', () => {
    expect(misses(centralisers, { annulus: [] })).toEqual(['fills annulus']);
  });

  it('passes by screens without a pack and a well that gives no water', () => {
    expect(
      say(centralisers, { ...none, annulus: [{ from: 20, to: 30, fill: 'naturalCollapse' }] }),
    ).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(centralisers, { ...held([], [3], []), ...inState(state) })).toEqual(passedBy);
  });
});
