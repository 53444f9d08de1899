import { describe, expect, it } from 'vitest';
import type { WaterSample } from '../../../../core/record/quality.ts';
import { judge } from './samples.ts';

const eColi = { parameter: 'E. coli', value: 0, unit: 'CFU/100 ml' };

function codes(sample: WaterSample) {
  return judge([sample]).notes.map(({ code, parameter, path }) => [code, parameter, path]);
}

describe('the age of a bottle', () => {
  const at = (receivedAt: string, ...results: WaterSample['results'] & object) =>
    codes({ takenAt: '2026-02-10T08:00Z', receivedAt, results });
  const path = 'quality[0].receivedAt';

  // Public laboratories' tables, read: bacteria 6 h by good practice, 24 h at the most; nitrate 48 h.
  it('is said where it is past good practice or past the most', () => {
    expect(at('2026-02-10T14:00Z', eColi)).toEqual([]);
    expect(at('2026-02-10T14:30Z', eColi)).toEqual([['sample.aging', 'eColi', path]]);
    expect(at('2026-02-11T09:00Z', eColi)).toEqual([['sample.late', 'eColi', path]]);
    const nitrate = { parameter: 'NO3', value: 3, unit: 'mg/l' };
    expect(at('2026-02-12T07:00Z', nitrate)).toEqual([]);
    expect(at('2026-02-12T09:00Z', nitrate)).toEqual([['sample.late', 'nitrate', path]]);
    expect(at('2026-03-01T09:00Z', { parameter: 'Fe', value: 1, unit: 'mg/l' })).toEqual([]);
  });

  it('does not matter to what was measured beside the well', () => {
    expect(at('2026-02-12T09:00Z', { ...eColi, where: 'field' })).toEqual([]);
  });

  it('is left open, or told for sure, where only days are known', () => {
    const days = (takenAt: string, receivedAt: string) =>
      codes({ takenAt, receivedAt, results: [eColi] }).map(([code]) => code);
    expect(days('2026-02-10', '2026-02-10')).toEqual([]);
    expect(days('2026-02-10', '2026-02-11')).toEqual(['sample.ageUnknown']);
    expect(days('2026-02-10', '2026-02-13')).toEqual(['sample.late']);
  });

  it('cannot be less than nothing', () => {
    expect(at('2026-02-10T06:00Z', eColi)).toEqual([['sample.receivedBefore', undefined, path]]);
  });
});

it('a sample without a day is said', () => {
  expect(codes({ results: [eColi] })).toEqual([
    ['sample.undated', undefined, 'quality[0].takenAt'],
  ]);
  expect(codes({})).toEqual([]);
});

it('pH and chlorine are measured beside the well', () => {
  const results = [
    { parameter: 'pH', value: 7, where: 'laboratory' as const },
    { parameter: 'Free chlorine', value: 0.1, unit: 'mg/l', where: 'field' as const },
  ];
  expect(codes({ takenAt: '2026-02-10', results })).toEqual([
    ['sample.measuredInLaboratory', 'pH', 'quality[0].results[0]'],
  ]);
});

describe('before handover', () => {
  it('what the set asks for and nobody looked for is missing', () => {
    expect(judge([]).missingBeforeHandover).toEqual([
      'eColi',
      'turbidity',
      'pH',
      'conductivity',
      'arsenic',
      'fluoride',
      'nitrate',
      'iron',
      'manganese',
      'chloride',
    ]);
    expect(judge([{ results: [eColi] }]).missingBeforeHandover).not.toContain('eColi');
  });

  it('dissolved solids stand for conductivity; a result without a figure stands for nothing', () => {
    const solids = { parameter: 'TDS', value: 300, unit: 'mg/l' };
    expect(judge([{ results: [solids] }]).missingBeforeHandover).not.toContain('conductivity');
    expect(judge([{ results: [{ parameter: 'Iron' }] }]).missingBeforeHandover).toContain('iron');
  });
});
