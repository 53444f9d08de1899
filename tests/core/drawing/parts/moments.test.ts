import { describe, expect, it } from 'vitest';
import { dayFigure, momentFigure } from '../../../../core/drawing/figures.ts';
import { factsOf } from '../../../../core/drawing/parts/particulars.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { record, resolve } from '../../model/well.ts';
import { kit } from '../trial.ts';

const says = (chapters: Omit<WellRecord, 'schemaVersion'>) =>
  factsOf(kit, record(chapters), resolve(chapters)).map((fact) => fact.says);

describe('a moment on the sheet', () => {
  it('has its time to the minute, and none where nobody wrote one', () => {
    expect(momentFigure('2026-03-14T09:40:25+01:00')).toBe('2026-03-14 09:40');
    expect(momentFigure('2026-03-14T09:40Z')).toBe('2026-03-14 09:40');
    expect(momentFigure('2026-03-14')).toBe('2026-03-14');
    expect(dayFigure('2026-03-14T09:40Z')).toBe('2026-03-14');
  });
});

describe('the hours of development', () => {
  const spent = (startedAt: string, endedAt: string) =>
    says({ development: [{ startedAt, endedAt }] });

  it('are those between two times, to the minute or second', () => {
    expect(spent('2026-03-14T08:00+01:00', '2026-03-14T09:30+01:00')).toEqual(['1.5 h']);
    expect(spent('2026-03-14T08:00:00Z', '2026-03-14T20:00Z')).toEqual(['12 h']);
  });

  it('are not said where only days were written', () => {
    expect(spent('2026-03-14', '2026-03-15')).toEqual([]);
    expect(spent('2026-03-14', '2026-03-15T09:30Z')).toEqual([]);
  });
});

describe('the rest level', () => {
  it('has the day alone where no time was written', () => {
    const read = (at: string) => says({ levels: [{ at, reading: 8, datum: 'ground' }] });
    expect(read('2026-03-14')).toEqual(['8.00 m, 2026-03-14']);
    expect(read('2026-03-14T09:40Z')).toEqual(['8.00 m, 2026-03-14 09:40']);
  });
});
