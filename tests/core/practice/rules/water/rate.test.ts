import { describe, expect, it } from 'vitest';
import {
  completed,
  doesNotApply,
  dry,
  found,
  judge,
  laidOut,
  met,
  missed,
  sentences,
} from '../service/judge.ts';

// Common practice: a well is tested at the rate that is to be pumped, or higher.
const tested = (rate: number) => ({
  ...completed,
  tests: [{ kind: 'constantRate' as const, rate }],
});

describe('rate.untested', () => {
  it('says a rate above every tested one, of the pump or as laid out', () => {
    const well = { ...tested(1.2), pump: { rate: 1.5 } };
    expect(found('rate.untested', well)).toEqual(['warning pump.rate']);
    expect(sentences('rate.untested', well)).toEqual([
      '1.5 m³/h is to be pumped; no pumping test went above 1.2 m³/h.',
    ]);
    expect(found('rate.untested', { ...well, layingOut: { rate: 2 } })).toEqual([
      'warning layingOut.rate',
    ]);
  });

  it('is met at the highest rate of any test, also of a step', () => {
    expect(judge('rate.untested', { ...tested(1.5), pump: { rate: 1.5 } })).toEqual(met);
    const series = [
      { minutes: 10, reading: 5, rate: 1 },
      { minutes: 20, reading: 6, rate: 3 },
    ];
    const step = { ...completed, tests: [{ kind: 'step' as const, series }] };
    expect(judge('rate.untested', { ...step, pump: { rate: 3 } })).toEqual(met);
    expect(found('rate.untested', { ...step, pump: { rate: 3.1 } })).toHaveLength(1);
  });

  it('misses the rate of a test, but of a well that is not so far', () => {
    expect(missed('rate.untested', { ...completed, pump: { rate: 1 } })).toEqual([
      'testRate tests',
    ]);
    const untold = { ...completed, tests: [{ kind: 'step' as const }], pump: { rate: 1 } };
    expect(missed('rate.untested', untold)).toEqual(['testRate tests']);
    expect(judge('rate.untested', { ...laidOut, layingOut: { rate: 1 } })).toEqual(doesNotApply);
  });

  it('does not apply where no rate is asked for, or to a dry hole', () => {
    expect(judge('rate.untested', tested(1))).toEqual(doesNotApply);
    expect(judge('rate.untested', { ...tested(1), ...dry, pump: { rate: 2 } })).toEqual(
      doesNotApply,
    );
  });
});
