import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { catalogueOf } from '../../../../../core/practice/catalogue.ts';
import { ruleCodes, type RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
import type { Surrounding } from '../../../../../core/record/site.ts';
import { doesNotApply, dry, found, generalFigure, judge, met, missed, sentences } from './judge.ts';

const around = (...surroundings: Surrounding[]) => ({ site: { surroundings } });

/** Metres in feet, as the printed rules give them. */
const feet = (count: number) => Math.round(count * 0.3048);

const rules = [
  ['near.latrine', 'latrine', 30],
  // Indiana, rules for private wells: septic tank 50 ft, drain field and seepage pit 100 ft.
  ['near.septicTank', 'septicTank', feet(50)],
  ['near.soakaway', 'soakaway', feet(100)],
  // LaPorte County, Indiana, private wells: feeding pen, livestock run 100 ft.
  ['near.livestock', 'livestock', feet(100)],
  // Mount Vernon, Iowa, shallow public well: graveyard and solid waste 200 ft.
  ['near.graveyard', 'graveyard', feet(200)],
  ['near.wasteDump', 'wasteDump', feet(200)],
  // Indiana: fuel or chemical tank 100 ft, stream, pond or ditch 25 ft.
  ['near.fuel', 'fuelOrChemicals', feet(100)],
  ['near.openWater', 'openWater', feet(25)],
  // LaPorte County, Indiana: building foundation 10 ft.
  ['near.building', 'building', feet(10)],
] as const;

describe.each(rules)('%s', (rule, kind, limit) => {
  it('is met exactly at the distance that is asked for', () => {
    expect(judge(rule, around({ kind, distance: limit, slope: 'uphill' }))).toEqual(met);
  });

  it('counts in full uphill, level and where nobody wrote, and a step less downhill', () => {
    const distance = limit - 0.5;
    const all = around(
      { kind, distance, slope: 'uphill' },
      { kind, distance, slope: 'level' },
      { kind, distance },
      { kind, distance, slope: 'downhill' },
    );
    expect(found(rule, all)).toEqual([
      'warning site.surroundings[0].distance',
      'warning site.surroundings[1].distance',
      'warning site.surroundings[2].distance',
      'note site.surroundings[3].distance',
    ]);
  });

  it('misses the distance, and the surroundings where there are none', () => {
    expect(missed(rule, around({ kind }))).toEqual(['distance site.surroundings[0].distance']);
    expect(missed(rule, {})).toEqual(['surroundings site.surroundings']);
  });

  it('does not speak of a site that has none of it, nor of a hole that is closed', () => {
    expect(judge(rule, around({ kind: 'well', distance: 1 }))).toEqual(doesNotApply);
    expect(judge(rule, { ...around({ kind, distance: 1 }), ...dry })).toEqual(doesNotApply);
  });
});

describe('near.latrine', () => {
  it('is grave nearer than the inspection form of WHO lets a fouling place be', () => {
    // WHO, Guidelines for drinking-water quality, vol. 3, 1997: normally not less than 15 m.
    expect(generalFigure('latrineGraveM')).toBe(15);
    const at = (distance: number, slope: 'level' | 'downhill') =>
      around({ kind: 'latrine', distance, slope });
    expect(found('near.latrine', at(14.9, 'level'))).toEqual([
      'error site.surroundings[0].distance',
    ]);
    expect(found('near.latrine', at(15, 'level'))).toEqual([
      'warning site.surroundings[0].distance',
    ]);
    expect(found('near.latrine', at(14.9, 'downhill'))).toEqual([
      'warning site.surroundings[0].distance',
    ]);
  });

  it('asks for 30 m', () => {
    // Sphere Handbook 2018, from memory; Indiana asks the same 100 ft of a pit privy.
    expect(generalFigure('latrineM')).toBe(30);
    expect(feet(100)).toBe(30);
  });

  it('names the distance, the slope and the limit', () => {
    const near = around({ kind: 'latrine', distance: 22.5, slope: 'uphill' });
    expect(sentences('near.latrine', near)).toEqual([
      'A latrine lies 22.5 m from the well, uphill of it; at least 30 m is asked for.',
    ]);
  });
});

describe('what is said of distances', () => {
  const codes = (Object.keys(ruleCodes) as RuleCode[]).filter((code) => code.startsWith('near.'));
  const safe = { en: /\bsafe/i, fr: /\bsûr|potable/i, pt: /\bsegur|potável/i };
  const local = { en: 'local rules', fr: 'règles locales', pt: 'regras locais' };

  it.each(languages)('never calls water safe and leaves the word to local rules, in %s', (lang) => {
    for (const code of codes) {
      const { sentence, why, todo } = catalogueOf(lang).findings[code];
      expect([sentence, why, todo].join(' ')).not.toMatch(safe[lang]);
      expect(todo).toContain(local[lang]);
    }
  });
});
