import { describe, expect, it } from 'vitest';
import { openArea } from '../../../../../core/practice/rules/casing/openArea.ts';
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
} from './wells.ts';

const open = (changed: object) => casing(cap, sump, { ...screen, ...changed }, plain);

describe('the rule of open area', () => {
  it('finds a screen with few slots', () => {
    expect(say(openArea, open({ openArea: 2.9 })).findings).toMatchObject([
      {
        code: 'screened.openArea',
        severity: 'warning',
        path: 'strings[0].components[2]',
        fromM: 22.5,
        toM: 28.5,
        values: { string: 1, percent: 2.9, least: 3 },
      },
    ]);
  });

  it('reckons it from the slots where nobody wrote it', () => {
    expect(say(openArea, open({ slotSpacing: 12 })).findings).toMatchObject([
      { values: { percent: expect.closeTo(2.5, 6) } },
    ]);
  });

  // Sawn PVC is open over 3 to 6 %: Driscoll 1986 and Practica 2010 (from memory).
  it.each([3, 6])('is met by %d %%', (percent) => {
    expect(say(openArea, open({ openArea: percent }))).toEqual(met);
  });

  it('cannot tell without slots', () => {
    expect(misses(openArea, casing(cap, sump, { kind: 'screen', length: 6 }, plain))).toEqual([
      'openArea strings[0].components[2].openArea',
    ]);
  });

  it('passes by casing without a screen and a well that gives no water', () => {
    expect(say(openArea, casing(plain))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(openArea, { ...open({ openArea: 1 }), ...inState(state) })).toEqual(passedBy);
  });
});
