import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { catalogueOf, sayFinding } from '../../../../../core/practice/catalogue.ts';
import type { WaterResults } from '../../../../../core/practice/rules/results.ts';
import { completed, doesNotApply, dry, laidOut, met, type Chapters } from '../service/judge.ts';
import { judgeHanded, nothingFound } from './handed.ts';

const sampled = { quality: [{ takenAt: '2026-02-10', results: [{ parameter: 'Arsenic' }] }] };
const path = 'quality[0].results[0]';

// Arsenic 0.01 mg/l, provisional: WHO 2022, as in water-quality values of the trade.
const arsenic = {
  ...nothingFound,
  aboveHealth: [
    { path: `${path}.value`, parameter: 'arsenic', value: 0.0123, limit: 0.01, unit: 'mg/l' },
  ],
};

describe('quality.aboveHealth', () => {
  const judge = (chapters: Chapters, results = nothingFound) =>
    judgeHanded('quality.aboveHealth', chapters, results);

  it('says each reading past a health-based value, to the thousandth', () => {
    const { findings } = judge({ ...completed, ...sampled }, arsenic);
    expect(findings.map((one) => [one.severity, one.path])).toEqual([
      ['warning', 'quality[0].results[0].value'],
    ]);
    expect(findings.map((one) => sayFinding(one).sentence)).toEqual([
      'Arsenic: the last reading is 0.0123 mg/l, above the health-based value of 0.01 mg/l.',
    ]);
    expect(findings.map((one) => sayFinding(one, 'pt').title)).toEqual([
      'Acima do valor de saúde: arsénio',
    ]);
  });

  it('is said of any well that may give water, and met where nothing is past a value', () => {
    expect(judge({ ...laidOut, ...sampled }, arsenic).findings).toHaveLength(1);
    expect(judge(sampled, arsenic).findings).toHaveLength(1);
    expect(judge({ ...completed, ...sampled })).toEqual(met);
  });

  it('misses what makes a reading clear, a sample, or the state', () => {
    const unclear = { ...nothingFound, unclear: [path] };
    expect(judge({ ...completed, ...sampled }, unclear).missing).toEqual([
      { what: 'waterResult', path },
    ]);
    expect(judge(completed).missing).toEqual([{ what: 'waterSample', path: 'quality' }]);
    expect(judge({}).missing).toEqual([{ what: 'state', path: 'identity.state' }]);
  });

  it('does not apply without results, before a sample is due, or to a dry hole', () => {
    expect(judgeHanded('quality.aboveHealth', { ...completed, ...sampled })).toEqual(doesNotApply);
    expect(judge(laidOut)).toEqual(doesNotApply);
    expect(judge({ ...dry, ...sampled }, arsenic)).toEqual(doesNotApply);
  });

  it('says the id of a parameter that only a set of the user knows', () => {
    const [reading] = arsenic.aboveHealth;
    const own = { ...arsenic, aboveHealth: [{ ...reading!, parameter: 'boron' }] };
    const [finding] = judge({ ...completed, ...sampled }, own).findings;
    expect(sayFinding(finding!).title).toBe('Above a health-based value: boron');
  });
});

describe('quality.untested', () => {
  const untested: WaterResults = {
    ...nothingFound,
    missingTests: [{ parameter: 'fluoride', path: 'quality[0].results' }],
  };
  const judge = (chapters: Chapters, results = untested) =>
    judgeHanded('quality.untested', chapters, results);

  it('notes what nobody looked for in a completed well', () => {
    const { findings } = judge({ ...completed, ...sampled });
    expect(findings.map((one) => [one.severity, one.path])).toEqual([
      ['note', 'quality[0].results'],
    ]);
    expect(findings.map((one) => sayFinding(one, 'fr').title)).toEqual([
      'Non analysé avant la remise\u00a0: fluorures',
    ]);
    expect(judge({ ...completed, ...sampled }, nothingFound)).toEqual(met);
  });

  it('misses a sample at all, or the state', () => {
    expect(judge(completed).missing).toEqual([{ what: 'waterSample', path: 'quality' }]);
    expect(judge(sampled).missing).toEqual([{ what: 'state', path: 'identity.state' }]);
  });

  it('does not apply before handover, to a dry hole, or without results', () => {
    expect(judge({ ...laidOut, ...sampled })).toEqual(doesNotApply);
    expect(judge({ ...dry, ...sampled })).toEqual(doesNotApply);
    expect(judgeHanded('quality.untested', { ...completed, ...sampled })).toEqual(doesNotApply);
  });
});

describe('what is said of samples', () => {
  const safe = { en: /\bsafe|\bpotable/i, fr: /\bsûre?\b|potable/i, pt: /\bsegur|potável/i };

  it.each(languages)('never declares water safe, in %s', (language) => {
    const { findings } = catalogueOf(language);
    for (const code of ['quality.aboveHealth', 'quality.untested'] as const)
      expect(Object.values(findings[code]).join(' ')).not.toMatch(safe[language]);
  });

  it.each(languages)('has every value of its sentences in %s', (language) => {
    const { findings } = catalogueOf(language);
    const { sentence } = findings['quality.aboveHealth'];
    for (const place of ['{parameter}', '{reading}', '{allowed}', '{unit}'])
      expect(sentence).toContain(place);
  });
});
