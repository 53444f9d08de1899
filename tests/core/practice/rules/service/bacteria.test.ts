import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { catalogueOf } from '../../../../../core/practice/catalogue.ts';
import { ruleCodes, type RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
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

const coli = { parameter: 'E. coli', value: 1, unit: 'per 100 ml', below: true };
const chlorine = (value: number) => ({ parameter: 'Free chlorine', value, unit: 'mg/l' });

/** Developed on the 14th, disinfected on the 20th, pumped off on the 21st at six, sampled later. */
const well = {
  ...completed,
  development: [{ startedAt: '2025-11-14T08:00Z', endedAt: '2025-11-14T16:00Z' }],
  disinfection: [
    { at: '2025-11-20T16:00Z', contactHours: 14, pumpedOffAt: '2025-11-21T06:00Z', residual: 0.1 },
  ],
};

const sampled = (takenAt: string, ...more: object[]) => ({
  ...well,
  quality: [{ takenAt, results: [coli, ...more] }],
});

const rules = [
  'bacteria.undeveloped',
  'bacteria.undisinfected',
  'bacteria.soon',
  'bacteria.chlorine',
] as const;

describe.each(rules)('%s', (rule) => {
  it('is met by a sample after development and disinfection, the chlorine gone', () => {
    expect(judge(rule, sampled('2025-11-24T07:20Z'))).toEqual(met);
  });

  it('misses a sample for bacteria in a completed well', () => {
    expect(missed(rule, well)).toEqual(['waterSample quality']);
    const iron = { takenAt: '2025-11-24', results: [{ parameter: 'Iron', value: 0.1 }] };
    expect(missed(rule, { ...well, quality: [iron] })).toEqual(['waterSample quality[0].results']);
    expect(missed(rule, { ...well, quality: [{ results: [coli] }] })).toEqual([
      'dates quality[0].takenAt',
    ]);
  });

  it('asks nothing of a well that is not so far, or will give no water', () => {
    expect(judge(rule, { ...well, ...laidOut })).toEqual(doesNotApply);
    expect(judge(rule, { ...well, ...dry })).toEqual(doesNotApply);
    expect(missed(rule, {})).toEqual(['state identity.state']);
  });

  it('goes by the last sample, which makes good an earlier one', () => {
    const [good] = sampled('2025-11-24T07:20Z').quality;
    const [early] = sampled('2025-11-13T07:20Z', chlorine(2)).quality;
    expect(judge(rule, { ...well, quality: [good, early] })).toEqual(met);
  });

  it('knows bacteria by their names in three languages', () => {
    for (const parameter of ['Coliformes fécaux', 'Bactérias totais', 'Enterococci']) {
      const quality = [{ takenAt: '2025-11-24T07:20Z', results: [{ parameter, value: 0 }] }];
      expect(judge(rule, { ...well, quality })).toEqual(met);
    }
  });
});

describe('the order of work', () => {
  // Develop until clear, disinfect, pump out until chlorine is below 0.1 mg/l, then the bottle for
  // bacteria: from memory, trade practice.
  it('wants development first', () => {
    const early = sampled('2025-11-14T10:00Z');
    expect(found('bacteria.undeveloped', early)).toEqual(['warning quality[0].takenAt']);
    expect(sentences('bacteria.undeveloped', early)).toEqual([
      'The last water sample for bacteria was taken on 2025-11-14 10:00; development went on until 2025-11-14 16:00.',
    ]);
    expect(judge('bacteria.undeveloped', sampled('2025-11-14'))).toEqual(met);
    expect(judge('bacteria.undeveloped', { ...sampled('2025-11-14'), development: [] })).toEqual(
      doesNotApply,
    );
  });

  it('wants disinfection before', () => {
    expect(found('bacteria.undisinfected', sampled('2025-11-18'))).toEqual([
      'warning quality[0].takenAt',
    ]);
    const without = { ...sampled('2025-11-18'), disinfection: [] };
    expect(missed('bacteria.undisinfected', without)).toEqual(['disinfection disinfection']);
    expect(judge('bacteria.soon', without)).toEqual(doesNotApply);
    expect(judge('bacteria.chlorine', without)).toEqual(doesNotApply);
    const undated = { ...sampled('2025-11-18'), disinfection: [{ contactHours: 14 }] };
    expect(missed('bacteria.undisinfected', undated)).toEqual(['dates disinfection[0].at']);
  });

  it('wants a day between pumping off and sampling, and neither the other way round', () => {
    expect(generalFigure('sampleWaitDays')).toBe(1);
    expect(judge('bacteria.soon', sampled('2025-11-22T06:00Z'))).toEqual(met);
    expect(found('bacteria.soon', sampled('2025-11-22T05:59Z'))).toEqual([
      'warning quality[0].takenAt',
    ]);
    expect(found('bacteria.soon', sampled('2025-11-20T20:00Z'))).toEqual([
      'warning quality[0].takenAt',
    ]);
    // Days alone are counted on the calendar.
    expect(judge('bacteria.soon', sampled('2025-11-22'))).toEqual(met);
    expect(found('bacteria.soon', sampled('2025-11-21'))).toEqual(['warning quality[0].takenAt']);
    const standing = { ...sampled('2025-11-22'), disinfection: [{ at: '2025-11-20' }] };
    expect(missed('bacteria.soon', standing)).toEqual(['disinfection disinfection[0].pumpedOffAt']);
  });

  it('wants the chlorine gone, by the sample’s own figure before that of the disinfection', () => {
    expect(generalFigure('sampleChlorineMgL')).toBe(0.1);
    const dosed = (residual?: number) => [
      { at: '2025-11-20', pumpedOffAt: '2025-11-21', residual },
    ];
    const taken = (...more: object[]) => sampled('2025-11-24', ...more);
    expect(found('bacteria.chlorine', { ...taken(), disinfection: dosed(0.2) })).toEqual([
      'warning disinfection[0].residual',
    ]);
    const gone = { ...taken(chlorine(0.1)), disinfection: dosed(0.2) };
    expect(judge('bacteria.chlorine', gone)).toEqual(met);
    expect(found('bacteria.chlorine', taken(chlorine(0.3)))).toEqual([
      'warning quality[0].results[1].value',
    ]);
    expect(missed('bacteria.chlorine', { ...taken(), disinfection: dosed() })).toEqual([
      'disinfection disinfection[0].residual',
    ]);
  });

  it('does not take chloride for chlorine', () => {
    const salty = { parameter: 'Chloride', value: 29, unit: 'mg/l' };
    const salées = { parameter: 'Chlorures', value: 29, unit: 'mg/l' };
    expect(judge('bacteria.chlorine', sampled('2025-11-24', salty, salées))).toEqual(met);
  });

  it('looks at the disinfection before the sample, not at one after the pump was set later', () => {
    const disinfection = [...well.disinfection, { at: '2025-12-04', residual: 2 }];
    const earlier = { ...sampled('2025-11-24'), disinfection };
    for (const rule of rules) expect(judge(rule, earlier)).toEqual(met);
  });
});

describe('contact.short', () => {
  const dosed = (...disinfection: object[]) => ({ ...completed, disinfection });

  it('is met exactly at its figure, as written or as the times tell', () => {
    // From memory, AWWA.
    expect(generalFigure('contactH')).toBe(4);
    expect(judge('contact.short', dosed({ contactHours: 4 }))).toEqual(met);
    const timed = { at: '2025-11-20T16:00Z', pumpedOffAt: '2025-11-20T20:00Z' };
    expect(judge('contact.short', dosed(timed))).toEqual(met);
  });

  it('says each disinfection that was pumped off before', () => {
    const short = dosed({ contactHours: 14 }, { contactHours: 3.5 });
    expect(found('contact.short', short)).toEqual(['warning disinfection[1].contactHours']);
    expect(sentences('contact.short', short)).toEqual([
      'The chlorine stood in the well for 3.5 h; at least 4 h is asked for.',
    ]);
  });

  it('misses the disinfection, or how long it stood', () => {
    expect(missed('contact.short', completed)).toEqual(['disinfection disinfection']);
    expect(missed('contact.short', dosed({ at: '2025-11-20', pumpedOffAt: '2025-11-21' }))).toEqual(
      ['disinfection disinfection[0].contactHours'],
    );
    expect(judge('contact.short', laidOut)).toEqual(doesNotApply);
    expect(judge('contact.short', dry)).toEqual(doesNotApply);
  });
});

describe('what is said of sampling', () => {
  const codes = (Object.keys(ruleCodes) as RuleCode[]).filter((code) => /^bacteria\./.test(code));
  const safe = { en: /\bsafe|\bpotable|drink/i, fr: /\bsûre?\b|potable/i, pt: /\bsegur|potável/i };

  it.each(languages)('never declares water safe, in %s', (language) => {
    expect(codes).toHaveLength(rules.length);
    for (const code of codes)
      expect(Object.values(catalogueOf(language).findings[code]).join(' ')).not.toMatch(
        safe[language],
      );
  });
});
