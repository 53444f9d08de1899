import { describe, expect, it } from 'vitest';
import { latestRest } from '../../../core/model/levels.ts';
import type { CasingString } from '../../../core/record/strings.ts';
import { pipe110, resolve, said } from './well.ts';

const hole = (to: number, diameter = 200) => ({ sections: [{ from: 0, to, diameter }] });
const bottom = (depth: number) => ({ by: 'bottom' as const, depth });
const piped = (length: number, depth: number, more: object = {}): CasingString => ({
  components: [{ ...pipe110, length, ...more }],
  set: bottom(depth),
});

describe('a cap that has a length', () => {
  const cap = { kind: 'cap' as const, outside: 110, wall: 4.2, length: 0.5 };
  const strings = [{ components: [cap, { ...pipe110, length: 9.5 }], set: bottom(10) }];
  const model = resolve({ bore: hole(10), strings });

  it('holds nothing, and takes up the hole as wide as it is', () => {
    // Inside 101.6 mm over 9.5 m: 8.1073 × 9.5 = 77.02 L; the cap's 0.5 m do not count.
    expect(model.contents[0]?.litres).toBeCloseTo(77.02, 2);
    expect(model.contents[0]?.litres).toBeCloseTo((Math.PI / 4) * 0.1016 ** 2 * 9500, 9);
    // 110 mm over all 10 m: 9.5033 × 10 = 95.03 L.
    expect(model.totals.displacedLitres).toBeCloseTo(95.03, 2);
  });

  it('is not asked how it fits the pipe that it closes', () => {
    const wide = { ...cap, outside: 125 };
    const capped = [{ components: [wide, { ...pipe110, length: 9.5 }], set: bottom(10) }];
    expect(said(resolve({ bore: hole(10), strings: capped }), 'string.stepWithoutReducer')).toEqual(
      [],
    );
  });
});

describe('a reducer without a wall', () => {
  it('holds nobody knows what', () => {
    const reducer = { kind: 'reducer' as const, outside: 160, upperOutside: 110, length: 1 };
    const strings = [{ components: [reducer], set: bottom(1) }];
    expect(resolve({ bore: hole(1), strings }).contents).toEqual([]);
  });
});

describe('a string of which only the inside is known', () => {
  it('holds what its inside holds', () => {
    // π/4 × 0.102² × 3 m = 24.51 L.
    const strings = [
      { components: [{ kind: 'plain' as const, inside: 102, length: 3 }], set: bottom(3) },
    ];
    expect(resolve({ bore: hole(3), strings }).contents[0]?.litres).toBeCloseTo(24.51, 2);
  });
});

describe('a string just as wide as the inside that it stands in', () => {
  it('leaves no room, which is no contradiction', () => {
    // Outside 101.6 mm in an inside of 110 − 2 × 4.2 = 101.6 mm.
    const inner = piped(3, 3, { outside: 101.6, wall: 3 });
    const model = resolve({ bore: hole(6), strings: [piped(6, 6), inner] });
    // Only the 3 m under the inner string: 8.1073 × 3 = 24.32 L.
    expect(model.contents[0]?.litres).toBeCloseTo(24.32, 2);
    expect(said(model, 'string.widerThanOuter')).toEqual([]);
  });
});

describe('a string wider than the inside that it is said to stand in', () => {
  it('leaves open what the outer one holds, which nobody can know', () => {
    const inner = piped(3, 3, { outside: 105, wall: 3 });
    const model = resolve({ bore: hole(6), strings: [piped(6, 6), inner] });
    expect(model.contents.map(({ string }) => string)).toEqual([1]);
    expect(said(model, 'string.widerThanOuter')).toHaveLength(1);
  });
});

describe('the depth of a hole of which nobody wrote it', () => {
  it('is not made of a string that stands above ground altogether', () => {
    const model = resolve({ strings: [piped(1, 0)] });
    expect(model.bore.depthM).toBeUndefined();
    expect(said(model, 'bore.depthAssumed')).toEqual([]);
  });

  it('may be less than a metre', () => {
    expect(resolve({ bore: { depthReached: 0.8 } }).bore.depthM).toBe(0.8);
  });
});

describe('the datum of a reading', () => {
  it('is the innermost string even where it ends level with the ground', () => {
    // Outer string 0.50 m out of the ground, inner one cut at 0: 5.00 m stay 5.00 m.
    const outer = piped(6.5, 6, { outside: 160, wall: 5 });
    const levels = [{ reading: 5, datum: 'casingTop' as const }];
    const model = resolve({ bore: hole(20), strings: [outer, piped(15, 15)], levels });
    expect(model.levels[0]?.depthM).toBe(5);
  });

  it('tells of a level at ground and at the foot of the hole nothing odd', () => {
    const levels = [0, 20].map((reading) => ({ reading, datum: 'ground' as const }));
    const model = resolve({ bore: hole(20), levels });
    expect(model.levels.map(({ depthM }) => depthM)).toEqual([0, 20]);
    expect(model.findings.filter(({ code }) => code.startsWith('level.'))).toEqual([]);
  });
});

describe('two rest levels of one moment', () => {
  it('leave the later in the list', () => {
    const at = '2021-05-01T06:00:00Z';
    const level = (depthM: number) =>
      ({ depthM, readM: depthM, datum: 'ground', state: 'static', at, path: '' }) as const;
    expect(latestRest([level(8), level(7)])?.depthM).toBe(7);
  });
});

describe('a string that was measured elsewhere', () => {
  it('is told with how far apart the two are', () => {
    const strings = [{ ...piped(10, 10), measuredDepth: 9.4 }];
    const [finding] = said(resolve({ bore: hole(12), strings }), 'string.measuredElsewhere');
    expect(finding?.values).toMatchObject({ measuredM: 9.4, tallyBottomM: 10 });
    expect(finding?.values['differenceM']).toBeCloseTo(0.6, 9);
  });
});

describe('a lens in the log', () => {
  const lens = { from: 4, to: 5, material: 'clay' as const };
  const around = { from: 0, to: 10, material: 'sand' as const };
  const laid = [
    ['sand', 0, 4],
    ['clay', 4, 5],
    ['sand', 5, 10],
  ];

  it.each([
    ['after', [around, lens]],
    ['before', [lens, around]],
  ])('is kept when it is written %s what lies around it', (_, log) => {
    const { strata } = resolve({ log });
    const told = strata.map(({ interval, fromM, toM }) => [interval.material, fromM, toM]);
    expect(told).toEqual(laid);
  });
});

describe('a screen beside which the log is silent', () => {
  const silent = (length: number, depth: number, to: number) => {
    const strings = [
      { components: [{ ...pipe110, kind: 'screen' as const, length }], set: bottom(depth) },
    ];
    const log = [{ from: 0, to, material: 'sand' as const }];
    return said(resolve({ bore: hole(10), strings, log }), 'screen.noStratum');
  };

  it('is told for the stretch of it below ground alone', () => {
    expect(silent(3, 6, 4)).toMatchObject([{ fromM: 4, toM: 6 }]);
    expect(silent(3, 6, 6)).toEqual([]);
    expect(silent(1.5, 0.8, 0.5)).toMatchObject([{ fromM: 0.5, toM: 0.8 }]);
  });
});
