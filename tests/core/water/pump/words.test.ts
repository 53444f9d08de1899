import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { pumpKinds } from '../../../../core/water/pump/kinds.ts';
import { reasonCodes, type Reason } from '../../../../core/water/pump/ranking.ts';
import { pumpWords, sayPumpQuantity, sayReason } from '../../../../core/water/pump/sayPump.ts';
import { allGiven, judged, ranked, wellWithDryLevel } from './wells.ts';

function placesOf(template: string): string[] {
  return [...template.matchAll(/\{(\w+)\}/g)].map((match) => match[1]!).sort();
}

/** Reasons of wells that between them bring about every code. */
function everyReason(): Reason[] {
  const poor = {
    safeRateM3h: 0.3,
    users: 400,
    casingInsideMm: 99,
    ph: 6,
    repair: 'caretaker',
    mains: false,
    sunHours: 5,
  } as const;
  const rankings = [
    ranked(wellWithDryLevel(3)),
    ranked(wellWithDryLevel(12)),
    ranked(wellWithDryLevel(28)),
    ranked(wellWithDryLevel(36)),
    ranked(wellWithDryLevel(12), poor),
    ranked(wellWithDryLevel(12), { ...allGiven, casingInsideMm: 70, users: 1000, safeRateM3h: 9 }),
    ranked({ ...wellWithDryLevel(12), strings: [] }),
    ranked(wellWithDryLevel(5), { ...allGiven, safeRateM3h: 1.2 }),
  ];
  return rankings.flatMap(({ kinds }) => kinds.flatMap(({ reasons }) => reasons));
}

describe('what a choice of pump says', () => {
  const reasons = everyReason();

  it('brings about every code', () => {
    expect([...new Set(reasons.map(({ code }) => code))].sort()).toEqual([...reasonCodes].sort());
  });

  it('names the same values in every language, and each is given', () => {
    for (const code of reasonCodes) {
      const places = languages.map((language) => placesOf(pumpWords(language).reasons[code]));
      expect(new Set(places.map(String)).size, code).toBe(1);
    }
    for (const reason of reasons)
      for (const language of languages) {
        const said = sayReason(reason, language);
        expect(said).not.toMatch(/[{}]|undefined|NaN/);
        expect(said).toMatch(/\.$/);
      }
  });

  it('has a source for every reason, in every language', () => {
    for (const { sources, code } of reasons) {
      expect(sources.length, code).toBeGreaterThan(0);
      for (const { title } of sources)
        for (const language of languages) expect(title[language]).not.toBe('');
    }
  });

  it('leaves no word out, and none in English', () => {
    const [english, french, portuguese] = languages.map(pumpWords);
    for (const group of [
      'kinds',
      'reasons',
      'cautions',
      'missing',
      'inputs',
      'assumptions',
    ] as const)
      for (const [key, word] of Object.entries(english![group])) {
        const others = [french![group], portuguese![group]] as Record<string, string>[];
        for (const other of others) expect(other[key], `${group}.${key}`).not.toBe('');
        if (word.includes(' '))
          for (const other of others) expect(other[key], `${group}.${key}`).not.toBe(word);
      }
  });

  it('says figures with the mark and the unit of the language', () => {
    const pump = judged('deepwellLever', wellWithDryLevel(12));
    const hours = pump.quantities.find(({ id }) => id === 'hoursDay')!;
    expect(sayPumpQuantity({ ...hours, value: 3.456 }, 'en')).toBe('3.46\u00a0h a day');
    expect(sayPumpQuantity({ ...hours, value: 3.456 }, 'fr')).toBe('3,46\u00a0h par jour');
  });

  it('says who can repair in words', () => {
    const inputs = { ...allGiven, repair: 'caretaker' } as const;
    const reason = judged('deepwellLever', wellWithDryLevel(12), inputs).reasons.find(
      ({ code }) => code === 'repairBeyond',
    )!;
    expect(sayReason(reason, 'en')).toBe(
      'Repair takes an area mechanic with lifting gear; the best that is there is a caretaker with hand tools.',
    );
  });

  it('names no pump but by its generic kind', () => {
    expect(Object.keys(pumpWords('en').kinds)).toEqual(pumpKinds.map(({ id }) => id));
  });
});
