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
} from './judge.ts';

const built = {
  ...completed,
  headworks: { padLength: 2, padWidth: 2, padThickness: 0.1, drainLength: 3, drainSlope: 2 },
};
const rules = ['pad.thin', 'pad.small', 'drain.short', 'drain.flat'] as const;

const but = (headworks: object) => ({
  ...completed,
  headworks: { ...built.headworks, ...headworks },
});

describe('rules of the headworks', () => {
  it('ask for what is published', () => {
    // Slab of 100 to 150 mm: from memory, WEDC booklet 3. Drain of 3 to 6 m: from memory, WEDC.
    expect(generalFigure('padThicknessM')).toBe(0.1);
    expect(generalFigure('drainLengthM')).toBe(3);
    // Apron radius of 1 to 2 m, slope of apron and drain 2 %: published advice on handpump
    // drainage channels.
    expect(generalFigure('padSideM')).toBe(2 * 1);
    expect(generalFigure('drainSlopePercent')).toBe(2);
  });

  it.each(rules)('%s is met exactly at its figure', (rule) => {
    expect(judge(rule, built)).toEqual(met);
  });

  it('say each measure that falls short, with its figure', () => {
    expect(found('pad.thin', but({ padThickness: 0.09 }))).toEqual([
      'warning headworks.padThickness',
    ]);
    expect(found('pad.small', but({ padWidth: 1.8 }))).toEqual(['note headworks.padWidth']);
    expect(found('drain.short', but({ drainLength: 2.5 }))).toEqual(['note headworks.drainLength']);
    expect(found('drain.flat', but({ drainSlope: 1 }))).toEqual(['warning headworks.drainSlope']);
    expect(sentences('pad.thin', but({ padThickness: 0.08 }))).toEqual([
      'The concrete pad is 0.08 m thick; at least 0.1 m is asked for.',
    ]);
  });

  it('ask a completed well for what is not written', () => {
    expect(missed('pad.thin', completed)).toEqual(['pad headworks.padThickness']);
    expect(missed('pad.small', but({ padWidth: undefined }))).toEqual(['pad headworks.padWidth']);
    expect(missed('drain.short', completed)).toEqual(['drain headworks.drainLength']);
    expect(missed('drain.flat', completed)).toEqual(['drain headworks.drainSlope']);
  });

  it.each(rules)('%s asks nothing of a well that is not so far, or will give no water', (rule) => {
    expect(judge(rule, laidOut)).toEqual(doesNotApply);
    expect(judge(rule, { ...but({ padThickness: 0.01 }), ...dry })).toEqual(doesNotApply);
    expect(missed(rule, {})).toEqual(['state identity.state']);
  });

  it('judge a pad that is planned', () => {
    expect(found('pad.thin', { ...laidOut, headworks: { padThickness: 0.05 } })).toEqual([
      'warning headworks.padThickness',
    ]);
  });
});
