import { describe, expect, it } from 'vitest';
import { pumpRoom } from '../../../../../core/practice/rules/casing/pumpRoom.ts';
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

/** The casing is 110 less twice 4.2, 101.6 mm inside. */
const pump = (bodyDiameter: number, intake = 20): Chapters => ({ pump: { bodyDiameter, intake } });

describe('the rule of the pump’s room', () => {
  it('finds a pump with little room', () => {
    expect(say(pumpRoom, pump(95)).findings).toMatchObject([
      {
        code: 'room.pump',
        severity: 'warning',
        path: 'pump.bodyDiameter',
        fromM: -0.4,
        toM: 22.5,
        values: { bodyMm: 95, insideMm: 101.6, leastMm: 10 },
      },
    ]);
  });

  it('is met by just enough room', () => {
    expect(say(pumpRoom, pump(91.6))).toEqual(met);
    expect(say(pumpRoom, pump(91.7)).findings).toHaveLength(1);
  });

  it('leaves a pump that is wider than the casing to the model', () => {
    expect(say(pumpRoom, pump(101.7)).findings).toEqual([]);
    expect(say(pumpRoom, pump(101.6)).findings).toHaveLength(1);
  });

  it('looks only at pipe that the pump passes', () => {
    const narrow = { ...plain, outside: 90, length: 10 };
    const string = casing(cap, sump, screen, narrow, { ...plain, length: 12.9 });
    expect(say(pumpRoom, { ...string, ...pump(76, 12.5) })).toEqual(met);
    expect(say(pumpRoom, { ...string, ...pump(76, 12.6) }).findings).toHaveLength(1);
  });

  it('cannot tell without body, intake or wall', () => {
    expect(misses(pumpRoom, { pump: { intake: 20 } })).toEqual(['pumpBody pump.bodyDiameter']);
    expect(misses(pumpRoom, { pump: { bodyDiameter: 95 } })).toEqual(['pumpIntake pump.intake']);
    expect(say(pumpRoom, { pump: { bodyDiameter: 76 } })).toEqual(met);
    const bare = { kind: 'plain', length: 22.9, outside: 110 } as const;
    expect(misses(pumpRoom, { ...casing(cap, sump, screen, bare), ...pump(76) })).toEqual([
      'pipeWall strings[0].components[3].wall',
    ]);
  });

  it('passes by a well without a pump or casing, and one that gives no water', () => {
    expect(say(pumpRoom, { pump: undefined as never })).toEqual(passedBy);
    expect(say(pumpRoom, { strings: [] })).toEqual(passedBy);
    for (const state of closedStates)
      expect(say(pumpRoom, { ...pump(95), ...inState(state) })).toEqual(passedBy);
  });
});
