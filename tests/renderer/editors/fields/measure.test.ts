import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMeasure } from '../../../../renderer/editors/fields/measure.ts';
import {
  amountField,
  countField,
  depthField,
  readAmount,
} from '../../../../renderer/editors/fields/number.ts';
import { ownUnit, unitOf } from '../../../../renderer/editors/fields/units.ts';
import type { Reading } from '../../../../renderer/state/field.ts';

const value = (reading: Reading | undefined) =>
  reading === undefined || (reading.ok ? reading.value : reading.sentence);

describe('a size as typed', () => {
  // 1 in = 25.4 mm and 1 ft = 304.8 mm exactly: the agreement of 1959, from memory.
  it.each([
    ['6 in', 152.4],
    ['6in', 152.4],
    ['6"', 152.4],
    ['6 ″', 152.4],
    ["6''", 152.4],
    ['6 inches', 152.4],
    ['6 po', 152.4],
    ['6 pol.', 152.4],
    ['6 1/2 in', 165.1],
    ['6-1/2"', 165.1],
    ['6½"', 165.1],
    ['1/2 in', 12.7],
    ['8 3/4 in', 222.3],
    ['150 mm', 150],
    ['150mm', 150],
    ['15 cm', 150],
    ['0,15 m', 150],
    ['1 ft', 304.8],
  ])('%s is read in millimetres', (text, millimetres) => {
    expect(value(readMeasure(text, 'mm'))).toBe(millimetres);
  });
});

describe('a depth as typed', () => {
  it.each([
    ['12\'6"', 3.81],
    ["12' 6", 3.81],
    ['12\'6½"', 3.823],
    ['12’6”', 3.81],
    ['12 ft 6 in', 3.81],
    ['12 ft', 3.658],
    ['41 pieds', 12.497],
    ['3 pés', 0.914],
    ['5 m 30 cm', 5.3],
    ['5 m', 5],
    ['12,345678 m', 12.345678],
    ['-6 in', -0.152],
    ['−18 cm', -0.18],
    ['450 mm', 0.45],
  ])('%s is read in metres', (text, metres) => {
    expect(value(readMeasure(text, 'm'))).toBe(metres);
  });

  it('is as it was typed, to the last digit, where nothing had to be converted', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (tenths) => {
        const text = String(tenths / 10_000);
        expect(value(readMeasure(`${text} m`, 'm'))).toBe(Number(text));
      }),
      { seed: 4 },
    );
  });
});

describe('flows, volumes, masses and times as typed', () => {
  it.each([
    ['1.5 l/s', 'm³/h', 5.4],
    ['900 l/h', 'm³/h', 0.9],
    ['20 l/min', 'm³/h', 1.2],
    ['1,2 m3/h', 'm³/h', 1.2],
    ['24 m³/d', 'm³/h', 1],
    ['0,6 m³', 'L', 600],
    ['20 l', 'L', 20],
    ['0.25 t', 'kg', 250],
    // The pound of 1959 is 0.45359237 kg: from memory.
    ['94 lb', 'kg', 42.638],
    ['0,5 kg', 'g', 500],
    ['90 s', 'min', 1.5],
    ['1h30', 'min', 90],
    ['1 h 30 min', 'min', 90],
    ['2 h', 'min', 120],
    ['90 min', 'h', 1.5],
    ['1 jour', 'h', 24],
    ['5 min/m', 'min/m', 5],
    ['3 %', '%', 3],
    ['12°', '°', 12],
    ['1,5 NTU', 'NTU', 1.5],
  ])('%s is read in %s', (text, unit, number) => {
    expect(value(readMeasure(text, unit))).toBe(number);
  });
});

describe('a measure that does not fit', () => {
  it('is refused with its kind and the field’s unit', () => {
    expect(value(readMeasure('5 kg', 'm'))).toBe(
      '“5 kg” is a mass, and this field is in m. Write it in m, or in another unit of that kind.',
    );
    expect(value(readMeasure('5 m', 'min'))).toContain('“5 m” is a length');
    expect(value(readMeasure('3 m 2 kg', 'm'))).toContain('is a mass');
  });

  it('is refused with a unit that is not known, by its name', () => {
    expect(value(readMeasure('5 gal', 'L'))).toContain('“gal” is no unit');
    expect(value(readMeasure('5x', 'm'))).toContain('“5x” is not a number');
  });

  it('is refused where only the field’s own unit is taken', () => {
    expect(value(readMeasure('5 min', 'min/m'))).toContain('Write it in min/m.');
  });

  it.each(['', '12', '12.5', 'six in', '12 6 in', '1.250,5 m', '5 m 30', '1/0 in', 'm'])(
    'says nothing of “%s”, which is for the reading of plain numbers',
    (text) => expect(readMeasure(text, 'm')).toBeUndefined(),
  );
});

describe('fields with a unit', () => {
  it('take another unit of its kind, and keep their limits', () => {
    expect(value(depthField('to', 'To').read('41 ft'))).toBe(12.497);
    expect(value(amountField('outside', 'Outside', 'mm').read('5"'))).toBe(127);
    expect(value(amountField('outside', 'Outside', 'mm').read('-5"'))).toContain('too small');
    expect(value(readAmount('1.250,5 m', {}, 'm'))).toContain('more than one decimal mark');
  });

  it('that only count take none', () => {
    expect(countField('count', 'Count').read('3 m').ok).toBe(false);
  });
});

describe('units', () => {
  it('are known whatever the case and with a full stop, and a gallon is not one', () => {
    expect(unitOf('MM')).toEqual({ kind: 'length', worth: 0.001 });
    expect(unitOf('ft.')).toEqual(unitOf("'"));
    expect(unitOf('gal')).toBeUndefined();
  });

  it('of fields are known by the name in the field’s head', () => {
    expect(ownUnit('m³/h')?.kind).toBe('flow');
    expect(ownUnit('NTU')).toBeUndefined();
  });
});
