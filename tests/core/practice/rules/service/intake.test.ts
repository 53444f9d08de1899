import { describe, expect, it } from 'vitest';
import {
  completed,
  doesNotApply,
  dry,
  found,
  generalFigure,
  judge,
  laidOut,
  met,
  missed,
  sentences,
  type Chapters,
} from './judge.ts';

const rest = { reading: 9, datum: 'ground', state: 'static' } as const;

/** Sump from 28.5 m to 30 m, screen from 22.5 m, plain pipe above; rest at 9 m, pumped to 14 m. */
const well: Chapters = {
  ...completed,
  bore: { depthReached: 30.4, sections: [{ from: 0, to: 30.4, diameter: 165 }] },
  strings: [
    {
      components: [
        { kind: 'sump', outside: 110, wall: 4.2, length: 1.5 },
        { kind: 'screen', outside: 110, wall: 4.2, length: 6 },
        { kind: 'plain', outside: 110, wall: 4.2, length: 23 },
      ],
      set: { by: 'bottom', depth: 30 },
    },
  ],
  levels: [rest, { reading: 14, datum: 'ground', state: 'pumping' }],
};

const at = (intake: number): Chapters => ({ ...well, pump: { kind: 'deepwellLever', intake } });
const rules = ['intake.shallow', 'intake.inScreen', 'intake.low'] as const;

describe.each(rules)('%s', (rule) => {
  it('is met by a pump in plain pipe, well under the water', () => {
    expect(judge(rule, at(20))).toEqual(met);
  });

  it('asks a completed well for its intake, and no other', () => {
    expect(missed(rule, well)).toEqual(['pumpIntake pump.intake']);
    expect(judge(rule, { ...well, ...laidOut })).toEqual(doesNotApply);
    expect(judge(rule, { ...at(20), ...dry })).toEqual(doesNotApply);
    expect(missed(rule, {})).toEqual(['state identity.state']);
  });

  it('does not speak of a bucket on a rope', () => {
    expect(judge(rule, { ...well, pump: { kind: 'bucketAndWindlass' } })).toEqual(doesNotApply);
  });
});

describe('intake.shallow', () => {
  it('is met exactly at the limit under the pumping level', () => {
    // Cylinder below the pumping level by a margin: from memory, common practice.
    expect(generalFigure('intakeUnderPumpingLevelM')).toBe(1);
    expect(judge('intake.shallow', at(15))).toEqual(met);
  });

  it('warns nearer than that, and calls a pump above the rest level grave', () => {
    expect(found('intake.shallow', at(14.9))).toEqual(['warning pump.intake']);
    expect(found('intake.shallow', at(9))).toEqual(['error pump.intake']);
    expect(sentences('intake.shallow', at(14.9))).toEqual([
      'The pump’s intake, at 14.90 m, is less than 1.00 m under the lowest water level known, 14.00 m.',
    ]);
  });

  it('reckons with the dry season and the drawdown that is expected then', () => {
    const layingOut = { drySeasonLevel: 13, drawdown: 5 };
    expect(judge('intake.shallow', { ...at(19), layingOut })).toEqual(met);
    expect(found('intake.shallow', { ...at(18.9), layingOut })).toEqual(['warning pump.intake']);
    expect(found('intake.shallow', { ...at(12), layingOut })).toEqual(['error pump.intake']);
  });

  it('says without a pumping level what the rest level tells, and misses the other', () => {
    const levels = [rest];
    expect(missed('intake.shallow', { ...at(20), levels })).toEqual(['pumpingLevel levels']);
    expect(found('intake.shallow', { ...at(8), levels })).toEqual(['error pump.intake']);
    expect(missed('intake.shallow', { ...at(20), levels: [] })).toEqual(['pumpingLevel levels']);
  });
});

describe('intake.inScreen', () => {
  it('is met at either end of the screen and broken within it', () => {
    // Never inside a screen if avoidable: from memory, trade practice.
    expect(judge('intake.inScreen', at(22.5))).toEqual(met);
    expect(judge('intake.inScreen', at(28.5))).toEqual(met);
    expect(found('intake.inScreen', at(24))).toEqual(['warning pump.intake']);
    expect(sentences('intake.inScreen', at(24))).toEqual([
      'The pump’s intake, at 24.00 m, hangs within the screen from 22.50 m to 28.50 m.',
    ]);
  });

  it('cannot judge without a tally', () => {
    expect(missed('intake.inScreen', { ...at(24), strings: [] })).toEqual(['strings strings']);
  });
});

describe('intake.low', () => {
  it('is met exactly at the limit above the closed foot of the string', () => {
    // A metre above the bottom: common practice.
    expect(generalFigure('intakeAboveBottomM')).toBe(1);
    expect(judge('intake.low', at(29))).toEqual(met);
    expect(found('intake.low', at(29.1))).toEqual(['warning pump.intake']);
  });

  it('leaves an intake below the bottom to the model, which calls it a contradiction', () => {
    expect(judge('intake.low', at(31))).toEqual(doesNotApply);
  });

  it('takes the foot of the hole, as it was sounded, where no string closes it', () => {
    const open = { ...at(25.6), strings: [], bore: { depthReached: 30, depthFound: 26.5 } };
    expect(found('intake.low', open)).toEqual(['warning pump.intake']);
    expect(judge('intake.low', { ...open, pump: { intake: 25.5 } })).toEqual(met);
    expect(missed('intake.low', { ...open, bore: {} })).toEqual(['boreDepth bore.depthReached']);
  });
});
