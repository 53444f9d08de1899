import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { Ring, StringModel, WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { garbageWell } from './garbageWell.ts';
import { randomWell, singleStringWell, telescopedWell } from './randomWell.ts';

const runs = { numRuns: 300, seed: 20240607 };

function holds(arbitrary: fc.Arbitrary<WellRecord>, law: (m: WellModel, r: WellRecord) => void) {
  fc.assert(
    fc.property(arbitrary, (record) => {
      law(resolveWell(record), record);
    }),
    runs,
  );
}

function shareSpace(a: Ring, b: Ring): boolean {
  const depth = Math.min(a.toM, b.toM) > Math.max(a.fromM, b.fromM);
  return depth && Math.min(a.outerMm, b.outerMm) > Math.max(a.innerMm, b.innerMm);
}

function ranges(model: WellModel): { fromM: number; toM: number }[] {
  const pieces = model.strings.flatMap((string) => [
    { fromM: string.topM, toM: string.bottomM },
    ...string.pieces.map(({ topM, bottomM }) => ({ fromM: topM, toM: bottomM })),
  ]);
  const rings = model.annulus.flatMap((zone) => [zone, ...zone.rings]);
  return [...model.bore.sections, ...model.strata, ...pieces, ...rings, ...model.contents];
}

/** Litres within a diameter (mm) over a length (m), written apart from the program's own. */
const cylinder = (mm: number, m: number) => (Math.PI * (mm / 200) ** 2 * m * 1000) / 100;

function holeLitres(record: WellRecord): number {
  return (record.bore?.sections ?? []).reduce(
    (sum, { from, to, diameter }) => sum + cylinder(diameter, to - from),
    0,
  );
}

function pipe(record: WellRecord, string: StringModel) {
  const { outside = NaN, wall = NaN } = record.strings?.[string.index]?.components[1] ?? {};
  return { outside, inside: outside - 2 * wall };
}

function annulusLitres(model: WellModel): number {
  return model.annulus.reduce((sum, { litres }) => sum + (litres ?? NaN), 0);
}

function expectEqualWithin(actual: number, expected: number, share: number) {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(share * Math.abs(expected));
}

describe('any realistic well', () => {
  it('is resolved without an error', () => {
    holds(randomWell, ({ findings }) =>
      expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]),
    );
  });

  it('has ranges that go down, and depths that follow one another', () => {
    holds(randomWell, (model) => {
      for (const { fromM, toM } of ranges(model)) expect(fromM).toBeLessThan(toM);
      for (const list of [model.bore.sections, model.strata])
        for (const [at, { fromM }] of list.entries())
          expect(fromM).toBeGreaterThanOrEqual(list[at - 1]?.toM ?? 0);
    });
  });

  it('has no two rings of its annulus in one place', () => {
    holds(randomWell, ({ annulus }) => {
      const rings = annulus.flatMap((zone) => zone.rings);
      for (const [at, ring] of rings.entries())
        for (const other of rings.slice(at + 1)) expect(shareSpace(ring, other)).toBe(false);
    });
  });

  it('has zones that together reach from ground to the foot of the hole', () => {
    holds(randomWell, ({ annulus, bore, strings }) => {
      const inner = strings.at(-1)?.index;
      const zones = annulus.filter(({ around }) => around === inner || around === undefined);
      const covered = zones.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
      expect(covered).toBeCloseTo(bore.depthM ?? NaN, 6);
    });
  });

  it('has strings whose tally is their foot plus their stick-up', () => {
    holds(randomWell, ({ strings }, record) => {
      for (const { index, tallyM, bottomM, stickUpM, topM } of strings) {
        expect(tallyM).toBeCloseTo(bottomM + stickUpM, 9);
        expect(topM).toBeCloseTo(-stickUpM, 9);
        const pieces = (record.strings?.[index]?.components ?? []).flatMap((component) =>
          Array<typeof component>(component.length ? (component.count ?? 1) : 0).fill(component),
        );
        const sum = pieces.reduce(
          (total, { length = 0, insertion = 0 }, at) => total + length - (at === 0 ? 0 : insertion),
          0,
        );
        expect(tallyM).toBeCloseTo(sum, 6);
      }
    });
  });

  it('does not move with the elevation of its ground', () => {
    fc.assert(
      fc.property(randomWell, fc.double({ noNaN: true }), (record, elevation) => {
        expect(resolveWell({ ...record, site: { elevation } })).toEqual(resolveWell(record));
      }),
      { ...runs, numRuns: 50 },
    );
  });

  it('is the same however the lists of its record are ordered', () => {
    holds(randomWell, (model, record) => {
      const turned = resolveWell({
        ...record,
        log: [...(record.log ?? [])].reverse(),
        annulus: [...(record.annulus ?? [])].reverse(),
      });
      const bare = ({ annulus, strata }: WellModel) => [
        annulus.map(({ fromM, toM, fill, around, litres }) => [fromM, toM, fill, around, litres]),
        strata.map(({ fromM, toM, interval }) => [fromM, toM, interval]),
      ];
      expect(bare(turned)).toEqual(bare(model));
    });
  });
});

describe('the volumes of a well with one string', () => {
  it('add up: hole = annulus + what the string takes up', () => {
    holds(singleStringWell, (model, record) => {
      const [string] = model.strings;
      const displaced = cylinder(pipe(record, string!).outside, string!.bottomM);
      expectEqualWithin(annulusLitres(model) + displaced, holeLitres(record), 1e-9);
      expectEqualWithin(model.totals.boreLitres ?? NaN, holeLitres(record), 1e-9);
      expectEqualWithin(model.totals.displacedLitres ?? NaN, displaced, 1e-9);
      expectEqualWithin(model.totals.annulusLitres ?? NaN, annulusLitres(model), 1e-9);
    });
  });
});

describe('the volumes of a telescoped well', () => {
  it('add up: hole = both annuli + the inner string + the wall of the outer', () => {
    holds(telescopedWell, (model, record) => {
      const [outer, inner] = model.strings;
      const [wide, narrow] = [pipe(record, outer!), pipe(record, inner!)];
      const wall = cylinder(wide.outside, outer!.bottomM) - cylinder(wide.inside, outer!.bottomM);
      const displaced = cylinder(narrow.outside, inner!.bottomM) + wall;
      expectEqualWithin(annulusLitres(model) + displaced, holeLitres(record), 1e-9);
      expectEqualWithin(model.totals.displacedLitres ?? NaN, displaced, 1e-9);
    });
  });
});

describe('a record whose numbers mean nothing', () => {
  it('is resolved without a throw, and twice to the same', () => {
    fc.assert(
      fc.property(garbageWell, (record) => {
        expect(resolveWell(record)).toEqual(resolveWell(record));
      }),
      { ...runs, numRuns: 500 },
    );
  });

  it('still gives ranges that go down', () => {
    fc.assert(
      fc.property(garbageWell, (record) => {
        for (const { fromM, toM } of ranges(resolveWell(record))) expect(fromM).toBeLessThan(toM);
      }),
      { ...runs, numRuns: 500 },
    );
  });
});
