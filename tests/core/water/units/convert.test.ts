import { describe, expect, it } from 'vitest';
import { conversion, openForms } from '../../../../core/water/units/convert.ts';
import { readForm } from '../../../../core/water/units/readForm.ts';
import { readUnit } from '../../../../core/water/units/readUnit.ts';

function factor(
  parameter: string,
  unit: string,
  as: string | undefined,
  to: string,
  toAs?: string,
) {
  const way = conversion(parameter, { unit, as }, { unit: to, as: toAs });
  return way.ok ? way.factor : way.why;
}

describe('a form is converted', () => {
  it.each([
    // WHO prints both figures of each pair, rounded.
    ['nitrate', 11.3, 'N', 50, 'NO3'],
    ['nitrite', 0.91, 'N', 3, 'NO2'],
    // Hydrochemistry textbooks, from memory: 1 mg/l NH4-N is 1.288 mg/l NH4.
    ['ammonia', 1, 'N', 1.288, 'NH4'],
    // From memory: alkalinity as CaCO3 times 1.219 is HCO3.
    ['alkalinity', 1, 'CaCO3', 1.219, 'HCO3'],
    // APHA 2340 B, from memory: 2.497 Ca + 4.118 Mg is hardness as CaCO3.
    ['calcium', 1, 'Ca', 2.497, 'CaCO3'],
    ['magnesium', 1, 'Mg', 4.118, 'CaCO3'],
  ])('%s: %d mg/l as %s', (parameter, value, from, converted, to) => {
    const by = Number(factor(parameter, 'mg/l', from, 'mg/l', to));
    expect(Math.abs(value * by - converted)).toBeLessThan(0.005 * converted);
  });

  it('from charges and moles: a published analysis of a monitoring well, ions of which the page is right', () => {
    const charge = (id: string, mgL: number, as?: string) =>
      mgL / Number(factor(id, 'meq/l', undefined, 'mg/l', as));
    expect(charge('calcium', 34)).toBeCloseTo(1.697, 3);
    expect(charge('sodium', 33)).toBeCloseTo(1.436, 2);
    expect(charge('magnesium', 15)).toBeCloseTo(1.234, 3);
    expect(charge('sulfate', 23)).toBeCloseTo(0.479, 3);
    expect(charge('nitrate', 5.7, 'N')).toBeCloseTo(0.407, 3);
  });
});

describe('hardness is converted', () => {
  it.each([
    // Definitions: a German degree is 10 mg/l of CaO, a French one 10 mg/l of CaCO3 (from memory).
    ['mg/l', 'CaO', 10 * 1.785, 10],
    ['°fH', undefined, 10, 1],
    ['°dH', undefined, 17.85, 1],
    ['°e', undefined, 14.25, 1],
    // A mole of hardness is a mole of calcium and magnesium, 100.09 g as CaCO3.
    ['mmol/l', undefined, 100.09, 1],
    ['meq/l', undefined, 50.04, 1],
  ])('from %s %s', (unit, as, converted, value) => {
    expect(value * Number(factor('hardness', unit, as, 'mg/l', 'CaCO3'))).toBeCloseTo(converted, 1);
  });
});

describe('a unit is read', () => {
  it.each([
    ['mg/L', 'mass', 1],
    ['mg l-1', 'mass', 1],
    ['mg·l⁻¹', 'mass', 1],
    ['mg/dm³', 'mass', 1],
    ['mg/litre', 'mass', 1],
    ['g/m3', 'mass', 1],
    ['µg/l', 'mass', 0.001],
    ['μg/L', 'mass', 0.001],
    ['ug/l', 'mass', 0.001],
    ['mcg/l', 'mass', 0.001],
    ['ppb', 'mass', 0.001],
    ['NTU', 'turbidity', 1],
    ['UTN', 'turbidity', 1],
    ['FNU', 'turbidity', 1],
    ['CFU/100 ml', 'count', 1],
    ['ufc/100mL', 'count', 1],
    ['NPP/100 ml', 'count', 1],
    ['per 100 ml', 'count', 1],
    ['/100 ml', 'count', 1],
    ['CFU/ml', 'count', 100],
    ['CFU/L', 'count', 0.1],
    ['µS/cm', 'conductivity', 1],
    ['µS cm-1', 'conductivity', 1],
    ['mS/m', 'conductivity', 10],
    ['mS/cm', 'conductivity', 1000],
    ['°C', 'temperature', 1],
    ['', 'plain', 1],
  ])('%s', (written, kind, toBase) => {
    expect(readUnit(written)).toMatchObject({ kind, toBase });
  });

  it.each([
    ['mg/l as N', 'N'],
    ['mg/l NO3', 'NO3'],
    ['mg NO3/l', 'NO3'],
    ['mg/l NO₃⁻', 'NO3'],
    ['mg N/l', 'N'],
    ['mg/l CaCO3', 'CaCO3'],
    ['mg/l en CaCO3', 'CaCO3'],
    ['mg/l N-NO3', 'N'],
  ])('%s, with its form', (written, as) => {
    expect(readUnit(written)).toMatchObject({ kind: 'mass', toBase: 1, as });
  });

  it('is not guessed', () => {
    for (const written of ['bottles', 'mg', 'CFU', 'mg/100 ml', 'CFU/0 ml', '%'])
      expect(readUnit(written), written).toBeUndefined();
  });
});

describe('a form is read', () => {
  it.each([
    ['NO3', 'NO3'],
    ['NO3-', 'NO3'],
    ['NO₃⁻', 'NO3'],
    ['NO3-N', 'N'],
    ['as N', 'N'],
    ['en N', 'N'],
    ['Ca2+', 'Ca'],
    ['SO4 2-', 'SO4'],
    ['caco3', 'CaCO3'],
  ])('%s', (written, form) => {
    expect(readForm(written)).toBe(form);
  });

  it('is not guessed', () => {
    expect(readForm('nothing')).toBeUndefined();
  });
});

describe('no conversion is found', () => {
  it('between kinds that have nothing to do with each other, or without a unit', () => {
    expect(factor('turbidity', 'mg/l', undefined, 'NTU')).toBe('unit');
    expect(factor('iron', 'NTU', undefined, 'mg/l')).toBe('unit');
    expect(factor('unheardOf', 'mmol/l', undefined, 'mg/l')).toBe('unit');
    expect(conversion('iron', {}, { unit: 'mg/l' })).toEqual({ ok: false, why: 'unit' });
  });

  it('from a form that custom leaves open, or that the substance does not have', () => {
    expect(factor('nitrate', 'mg/l', undefined, 'mg/l', 'NO3')).toBe('form');
    expect(factor('nitrate', 'mg/l', 'CaCO3', 'mg/l', 'NO3')).toBe('form');
    expect(openForms('nitrate')).toEqual(['NO3', 'N']);
    expect(openForms('sulfate')).toEqual([]);
  });
});
