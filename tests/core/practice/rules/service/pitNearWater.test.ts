import { describe, expect, it } from 'vitest';
import type { Surrounding } from '../../../../../core/record/site.ts';
import { doesNotApply, dry, found, generalFigure, judge, met, missed, sentences } from './judge.ts';

const rest = (...readings: number[]) =>
  readings.map((reading, month) => ({
    at: `2026-0${month + 1}-10`,
    reading,
    datum: 'ground' as const,
    state: 'static' as const,
  }));

const pit = (pitBase: number, more: Partial<Surrounding> = {}) => ({
  site: {
    surroundings: [{ kind: 'latrine' as const, distance: 20, pitBase, ...more }],
  },
});

const base = 'site.surroundings[0].pitBase';

describe('pit.nearWater', () => {
  it('asks for as much dry ground as the Sphere Handbook does', () => {
    // Sphere Handbook 2018, from memory: base of a pit at least 1.5 m above the water table.
    expect(generalFigure('pitAboveWaterM')).toBe(1.5);
  });

  it('is met exactly at the limit, though the sum of the figures is not a round one', () => {
    expect(judge('pit.nearWater', { ...pit(2.8), levels: rest(4.3) })).toEqual(met);
  });

  it('warns of a pit nearer to the water, by the highest rest level that was read', () => {
    const near = { ...pit(2), levels: rest(3.4, 5.2) };
    expect(found('pit.nearWater', near)).toEqual([`warning ${base}`]);
    expect(sentences('pit.nearWater', near)).toEqual([
      'The base of a pit, 2.00 m deep, is less than 1.50 m above the highest rest level read, 3.40 m, if its ground is as high as the well’s.',
    ]);
  });

  it('notes one that is far off or uphill', () => {
    const levels = rest(3);
    expect(found('pit.nearWater', { ...pit(2, { distance: 30 }), levels })).toEqual([
      `note ${base}`,
    ]);
    expect(found('pit.nearWater', { ...pit(2, { slope: 'uphill' }), levels })).toEqual([
      `note ${base}`,
    ]);
  });

  it('judges other pits where their base was written, and asks for that of latrines alone', () => {
    const site = {
      surroundings: [
        { kind: 'soakaway' as const, distance: 20, pitBase: 3 },
        { kind: 'septicTank' as const, distance: 20 },
        { kind: 'latrine' as const, distance: 20 },
      ],
    };
    const verdict = { site, levels: rest(4) };
    expect(found('pit.nearWater', verdict)).toEqual([`warning ${base}`]);
    expect(missed('pit.nearWater', verdict)).toEqual(['pitBase site.surroundings[2].pitBase']);
  });

  it('cannot judge without a rest level or without surroundings', () => {
    expect(missed('pit.nearWater', pit(2))).toEqual(['restLevel levels']);
    expect(missed('pit.nearWater', {})).toEqual(['surroundings site.surroundings']);
  });

  it('does not speak of a site without pits, nor of a hole that is closed', () => {
    const goats = { site: { surroundings: [{ kind: 'livestock' as const }] } };
    expect(judge('pit.nearWater', goats)).toEqual(doesNotApply);
    expect(judge('pit.nearWater', { ...pit(9), ...dry })).toEqual(doesNotApply);
  });
});
