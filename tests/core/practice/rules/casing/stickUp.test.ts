import { describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { stickUp } from '../../../../../core/practice/rules/casing/stickUp.ts';
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
  type Chapters,
} from './wells.ts';

const measured = (casingAboveGround: number): Chapters => ({ headworks: { casingAboveGround } });

const tally = (height: number): Chapters =>
  casing(cap, sump, screen, { ...plain, length: 22.5 + height });

const set = (height: number): Chapters => ({
  strings: [{ components: [cap, sump, screen, plain], set: { by: 'stickUp', height } }],
});

describe('the rule of stick-up', () => {
  it('finds casing that ends too low', () => {
    expect(say(stickUp, measured(0.25)).findings).toMatchObject([
      {
        code: 'stickUp.height',
        severity: 'warning',
        path: 'headworks.casingAboveGround',
        fromM: -0.25,
        values: { heightM: 0.25, leastM: 0.3, mostM: 0.5 },
      },
    ]);
    expect(say(stickUp, tally(0.2)).findings).toMatchObject([{ path: 'strings[0].set' }]);
  });

  it('notes casing that ends too high, unless it may still be cut', () => {
    expect(say(stickUp, tally(0.7)).findings).toMatchObject([{ severity: 'note' }]);
    expect(say(stickUp, { ...tally(0.7), ...inState('drilled') })).toEqual(met);
  });

  it('is graver where it was set below ground or is planned there', () => {
    expect(say(stickUp, set(-0.1)).findings).toMatchObject([{ severity: 'error', fromM: 0.1 }]);
    const plan = { ...tally(-0.1), ...inState('laidOut') };
    expect(say(stickUp, plan).findings).toMatchObject([{ severity: 'error' }]);
    expect(say(stickUp, tally(-0.1)).findings).toMatchObject([{ severity: 'warning' }]);
  });

  // 0.3 to 0.5 m: ICRC 2010, RWSN (from memory).
  it.each([0.3, 0.4, 0.5])('is met by %d m', (height) => {
    expect(say(stickUp, measured(height))).toEqual(met);
    expect(say(stickUp, tally(height))).toEqual(met);
  });

  it('cannot tell of a tally that ends just at ground, as lists of wells have it', () => {
    const list = { ...tally(0), ...withoutState };
    expect(misses(stickUp, list)).toEqual(['stickUp headworks.casingAboveGround']);
    expect(say(stickUp, set(0)).findings).toMatchObject([{ severity: 'warning' }]);
  });

  it('cannot tell where nothing says how deep the string stands', () => {
    expect(misses(stickUp, { strings: [{ components: [plain] }] })).toEqual([
      'stickUp headworks.casingAboveGround',
    ]);
    expect(misses(stickUp, { strings: [] })).toEqual(['strings strings']);
  });

  it('takes the innermost string that comes to the surface', () => {
    const wide = { ...plain, outside: 200, length: 10 };
    const strings: WellRecord['strings'] = [
      { components: [wide], set: { by: 'stickUp', height: 0.1 } },
      { components: [cap, sump, screen, plain], set: { by: 'bottom', depth: 30 } },
    ];
    expect(say(stickUp, { strings })).toEqual(met);
  });

  it('passes by a well that gives no water', () => {
    for (const state of closedStates)
      expect(say(stickUp, { ...measured(0), ...inState(state) })).toEqual(passedBy);
  });
});
