import { describe, expect, it } from 'vitest';
import { footOpen } from '../../../../../core/practice/rules/casing/footOpen.ts';
import {
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

const open = casing(sump, screen, plain);

describe('the rule of the foot', () => {
  it('finds a string with a screen and no cap', () => {
    expect(say(footOpen, open).findings).toMatchObject([
      {
        code: 'foot.open',
        severity: 'warning',
        path: 'strings[0].components[0]',
        fromM: 30,
        values: { string: 1 },
      },
    ]);
  });

  it('finds it in a plan as well', () => {
    expect(say(footOpen, { ...open, ...inState('laidOut') }).findings).toHaveLength(1);
  });

  it('is met by a cap, with a length or without', () => {
    expect(say(footOpen)).toEqual(met);
    const long = { kind: 'cap', outside: 110, length: 0.12 } as const;
    expect(say(footOpen, casing(long, sump, screen, plain))).toEqual(met);
  });

  it('cannot tell of a well from a list', () => {
    expect(misses(footOpen, { ...open, ...withoutState })).toEqual(['state identity.state']);
  });

  it('passes by casing that is open below on purpose, and a well that gives no water', () => {
    expect(say(footOpen, casing(plain))).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(footOpen, { ...open, ...inState(state) })).toEqual(passedBy);
  });
});
