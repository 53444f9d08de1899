import { describe, expect, it } from 'vitest';
import { sumpLength } from '../../../../../core/practice/rules/casing/sumpLength.ts';
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
  withoutState,
} from './wells.ts';

const withSump = (length: number) =>
  casing(cap, { ...sump, length }, screen, { ...plain, length: 24.4 - length });

describe('the rule of the sump', () => {
  it('finds one that is too short, with where it stands', () => {
    const { findings } = say(sumpLength, withSump(0.9));
    expect(findings).toMatchObject([
      {
        code: 'sump.length',
        severity: 'warning',
        path: 'strings[0].components[1]',
        fromM: 29.1,
        toM: 30,
        values: { string: 1, sumpM: 0.9, leastM: 1, mostM: 3 },
      },
    ]);
  });

  it('notes one that is too long', () => {
    expect(say(sumpLength, withSump(3.1)).findings).toMatchObject([{ severity: 'note' }]);
  });

  // 1 to 2 m of plain pipe, capped: Practica 2010 and RWSN (from memory).
  it.each([1, 1.5, 2, 3])('is met by %d m', (length) => {
    expect(say(sumpLength, withSump(length))).toEqual(met);
  });

  it('counts plain pipe as well as sump, less its joints', () => {
    const two = { ...plain, length: 0.6, count: 2, insertion: 0.1 };
    expect(say(sumpLength, casing(cap, two, screen, plain)).findings).toEqual([]);
    const short = { ...two, length: 0.5 };
    expect(say(sumpLength, casing(cap, short, screen, plain)).findings).toMatchObject([
      { values: { sumpM: 0.9 } },
    ]);
  });

  it('finds a screen that stands on the foot', () => {
    expect(say(sumpLength, casing(cap, screen, plain)).findings).toMatchObject([
      { path: 'strings[0].components[1]', fromM: 30, values: { sumpM: 0 } },
    ]);
  });

  it('cannot tell of a well from a list, which names the screen alone', () => {
    expect(misses(sumpLength, { ...withoutState, ...casing(screen, plain) })).toEqual([
      'state identity.state',
    ]);
  });

  it('cannot tell where a piece under the screen has no length', () => {
    expect(misses(sumpLength, casing(cap, { kind: 'sump' }, screen, plain))).toEqual([
      'strings strings[0].components[1].length',
    ]);
  });

  it('misses the tally of a completed well, not of one that is just drilled', () => {
    expect(misses(sumpLength, { strings: [] })).toEqual(['strings strings']);
    expect(say(sumpLength, { strings: [], ...inState('drilled') })).toEqual(passedBy);
  });

  it('passes by casing without a screen and a well that gives no water', () => {
    expect(say(sumpLength, casing(plain))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(sumpLength, { ...withSump(0.2), ...inState(state) })).toEqual(passedBy);
  });
});
