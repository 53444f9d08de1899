import { describe, expect, it } from 'vitest';
import { latestRest } from '../../../core/model/levels.ts';
import { pipe110, resolve, said } from './well.ts';

const bore = { sections: [{ from: 0, to: 30, diameter: 200 }] };
const sump = { ...pipe110, kind: 'sump' as const, length: 1 };
const capped = {
  components: [{ kind: 'cap' as const }, sump, { ...pipe110, length: 19.6 }],
  set: { by: 'bottom' as const, depth: 20 },
};
const strings = [capped];
const below = (reading: number) => ({ reading, datum: 'casingTop' as const });

describe('a level', () => {
  it('read from the casing top is reduced by its height above ground', () => {
    // The tally of 20.6 m stands 0.60 m out of the ground: 8.25 − 0.60 = 7.65 m.
    const { levels } = resolve({ bore, strings, levels: [below(8.25)] });
    expect(levels).toEqual([{ depthM: 7.65, readM: 8.25, datum: 'casingTop', path: 'levels[0]' }]);
  });

  it('read from the ground is kept', () => {
    const { levels } = resolve({ bore, levels: [{ reading: 7.65, datum: 'ground', rate: 1.5 }] });
    expect(levels[0]).toMatchObject({ depthM: 7.65, rateM3h: 1.5 });
  });

  it('is reduced by the height at the headworks where there is no tally', () => {
    const model = resolve({ headworks: { casingAboveGround: 0.4 }, levels: [below(5)] });
    expect(model.levels[0]?.depthM).toBe(4.6);
  });

  it('is reduced by the innermost string that reaches the surface', () => {
    const outer = {
      components: [{ kind: 'plain' as const, outside: 219, wall: 6, length: 6.2 }],
      set: { by: 'bottom' as const, depth: 6 },
    };
    const model = resolve({ bore, strings: [outer, capped], levels: [below(8.25)] });
    expect(model.levels[0]?.depthM).toBe(7.65);
  });

  it('without a known casing top is left out and said', () => {
    const model = resolve({ bore, levels: [below(5)] });
    expect(model.levels).toEqual([]);
    expect(said(model, 'level.noStickUp')).toMatchObject([{ path: 'levels[0]' }]);
  });

  it('is said to hang on an assumption where the string does', () => {
    const model = resolve({ bore, strings: [{ ...capped, set: undefined }], levels: [below(25)] });
    expect(said(model, 'level.stickUpAssumed')).toHaveLength(1);
  });

  it('is said where it stands above ground or below the hole', () => {
    const model = resolve({
      bore,
      levels: [-0.3, 31].map((reading) => ({ reading, datum: 'ground' as const })),
    });
    expect(said(model, 'level.aboveGround')).toMatchObject([{ path: 'levels[0]' }]);
    expect(said(model, 'level.belowHole')).toMatchObject([{ path: 'levels[1]' }]);
  });
});

describe('the latest rest level', () => {
  const level = (depthM: number, more: object) => ({
    ...{ depthM, readM: depthM, datum: 'ground' as const, path: '' },
    ...more,
  });

  it('is the latest by moment, whatever the time zone and the order', () => {
    const levels = [
      level(8, { state: 'static', at: '2021-05-01T07:30:00+02:00' }), // 05:30 in UTC
      level(7, { state: 'static', at: '2021-05-01T06:00:00+00:00' }),
      level(5, { state: 'static' }),
      level(12, { state: 'pumping', at: '2022-01-01T06:00:00+00:00' }),
    ] as const;
    expect(latestRest(levels)?.depthM).toBe(7);
    expect(latestRest([...levels].reverse())?.depthM).toBe(7);
  });

  it('is the last in the list where no moment is known', () => {
    expect(latestRest([level(8, { state: 'static' }), level(7, { state: 'static' })])?.depthM).toBe(
      7,
    );
    expect(latestRest([level(9, {})])).toBeUndefined();
  });
});

describe('what a string holds', () => {
  it('is its inside from top to foot, and the water under the rest level', () => {
    const rest = { reading: 8, datum: 'ground' as const, state: 'static' as const };
    const { contents } = resolve({ bore, strings, levels: [rest] });
    expect(contents).toHaveLength(1);
    // 8.107 L/m × 20.6 m = 167.01 L; water 8.107 × 12 m = 97.29 L.
    expect(contents[0]).toMatchObject({ string: 0, fromM: -0.6, toM: 20 });
    expect(contents[0]?.litres).toBeCloseTo(167.01, 1);
    expect(contents[0]?.waterLitres).toBeCloseTo(97.29, 1);
  });

  it('is less the string that stands in it, and not told without the walls', () => {
    const outer = {
      components: [{ kind: 'plain' as const, outside: 170, wall: 5, length: 6 }],
      set: { by: 'bottom' as const, depth: 6 },
    };
    const { contents } = resolve({ bore, strings: [outer, capped] });
    // π/4 × (0.16² − 0.11²) × 6 m = 63.62 L.
    expect(contents[0]?.litres).toBeCloseTo(63.62, 2);
    const bare = [{ ...capped, components: [{ kind: 'plain' as const, length: 3, outside: 110 }] }];
    expect(resolve({ bore, strings: bare }).contents).toEqual([]);
  });

  it('has no water where the rest level lies below its foot', () => {
    const rest = { reading: 25, datum: 'ground' as const, state: 'static' as const };
    expect(resolve({ bore, strings, levels: [rest] }).contents[0]?.waterLitres).toBe(0);
  });
});

describe('a pump', () => {
  const pumped = (pump: object, string: object = capped) =>
    resolve({ bore, strings: [{ ...capped, ...string }], pump });

  it('keeps its measures', () => {
    const pump = { intake: 15, cylinderTop: 14.2, bodyDiameter: 63, riserDiameter: 50 };
    expect(pumped(pump).pump).toEqual({
      intakeM: 15,
      cylinderTopM: 14.2,
      bodyMm: 63,
      riserMm: 50,
      path: 'pump',
    });
  });

  it('cannot hang below a closed string, but may in an open hole', () => {
    expect(said(pumped({ intake: 22 }), 'pump.belowString')).toMatchObject([
      { severity: 'error', path: 'pump.intake' },
    ]);
    const open = pumped({ intake: 22 }, { components: capped.components.slice(1) });
    expect(said(open, 'pump.belowString')).toEqual([]);
    expect(said(open, 'pump.inOpenHole')).toMatchObject([{ severity: 'note' }]);
  });

  it('is said where its intake hangs in the sump', () => {
    expect(said(pumped({ intake: 19.5 }), 'pump.inSump')).toHaveLength(1);
    expect(said(pumped({ intake: 19 }), 'pump.inSump')).toEqual([]);
  });

  it('must pass the narrowest pipe above its intake, and no other', () => {
    const narrow = { ...pipe110, wall: 10 };
    const components = [
      { ...narrow, length: 5 },
      { ...pipe110, length: 15.6 },
    ];
    const at = (intake: number) =>
      said(pumped({ intake, bodyDiameter: 95 }, { components }), 'pump.widerThanCasing');
    expect(at(14)).toEqual([]);
    expect(at(16)).toMatchObject([{ values: { bodyMm: 95, insideMm: 90 } }]);
  });
});

describe('a water strike', () => {
  it('keeps its depth and its rise', () => {
    const { strikes } = resolve({ bore, strikes: [{ depth: 12, rise: 7 }, { depth: 20 }] });
    expect(strikes).toEqual([
      { depthM: 12, riseM: 7, path: 'strikes[0]' },
      { depthM: 20, path: 'strikes[1]' },
    ]);
  });
});
