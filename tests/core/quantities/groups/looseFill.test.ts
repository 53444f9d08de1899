import { describe, expect, it } from 'vitest';
import { cased, missingOf, off, reckon, those, valueOf } from '../reckoned.ts';

const pack = (from: number, to: number) => ({ from, to, fill: 'gravelPack' }) as const;

describe('gravel', () => {
  // V = π/4 (D² − d²) L, tolerance 0.1 %; loose gravel of 1.6 t/m³ and the bags before rounding are
  // handbooks' (from memory), computed apart.
  const table = [
    [150, 110, 10, 130.7, 2.61, 98.0],
    [165, 110, 12, 228.1, 4.56, 171.1],
    [200, 110, 10, 350.6, 7.01, 263.0],
    [200, 125, 15, 459.5, 9.19, 344.6],
    [250, 160, 20, 927.4, 18.55, 695.5],
  ] as const;

  it.each(table)(
    'of a hole of %i mm round %i mm over %i m',
    (hole, pipe, m, kg, bags, withExtra) => {
      const chapters = cased(hole, pipe, m, pack(0, m));
      const bare = reckon(chapters, { gravelExtraShare: 0 });
      expect(off(valueOf(bare, 'gravelKg'), kg)).toBeLessThan(0.001);
      expect(valueOf(bare, 'gravelSacks')).toBe(Math.ceil(bags));
      expect(off(valueOf(reckon(chapters), 'gravelLitres'), withExtra)).toBeLessThan(0.001);
    },
  );

  it('has sacks for each zone, and fewer in all where half sacks go on', () => {
    // 19 / 12 of the table's 4.56 bags over 12 m: 1.9 bags a zone of 5 m, 3.8 in all.
    const reckoned = reckon(cased(165, 110, 12, pack(0, 5), pack(7, 12)), { gravelExtraShare: 0 });
    expect(those(reckoned, 'gravelZoneSacks').map(({ value }) => value)).toEqual([2, 2]);
    expect(valueOf(reckoned, 'gravelSacks')).toBe(4);
    const short = reckon(cased(165, 110, 12, pack(0, 1), pack(11, 12)), { gravelExtraShare: 0 });
    expect(those(short, 'gravelZoneSacks').map(({ value }) => value)).toEqual([1, 1]);
    expect(valueOf(short, 'gravelSacks')).toBe(1);
  });

  it('is counted by the sacks that the record names', () => {
    const heavy = { ...pack(0, 6), sackMass: 40 };
    const reckoned = reckon(cased(165, 110, 12, heavy, pack(6, 12)), { gravelExtraShare: 0 });
    // 228.1 / 2 = 114.05 kg a zone: 2.85 sacks of 40 kg, 2.28 of 50 kg.
    const sacks = those(reckoned, 'gravelZoneSacks');
    expect(sacks.map(({ value }) => value)).toEqual([3, 3]);
    expect(sacks[0]!.inputs[1]!.from).toEqual({ path: 'annulus[0].sackMass' });
    expect(sacks[1]!.inputs[1]!.from).toEqual({ figure: 'gravelSackKg' });
    expect(valueOf(reckoned, 'gravelSacks')).toBe(6);
  });

  it('has no whole where the hole was not measured at a zone', () => {
    const chapters = cased(165, 110, 12, pack(0, 5), pack(7, 12));
    const sections = [{ from: 0, to: 6, diameter: 165 }];
    const reckoned = reckon({ ...chapters, bore: { depthReached: 12, sections } });
    expect(those(reckoned, 'gravelZoneLitres')).toHaveLength(1);
    expect(those(reckoned, 'gravelLitres')).toEqual([]);
    expect(missingOf(reckoned, 'gravel')).toEqual([
      { what: 'boreDiameter', path: 'bore.sections', fromM: 7, toM: 12 },
    ]);
  });

  it('says that a pipe’s diameter is missing where the hole’s is known', () => {
    const reckoned = reckon({
      ...cased(165, 110, 12, pack(0, 12)),
      strings: [{ set: { by: 'bottom', depth: 12 }, components: [{ kind: 'plain', length: 12 }] }],
    });
    expect(missingOf(reckoned, 'gravel')).toEqual([
      { what: 'pipeDiameter', path: 'strings[0]', fromM: 0, toM: 12 },
    ]);
  });

  it('is unknown where nobody wrote the fills', () => {
    const reckoned = reckon(cased(165, 110, 12));
    for (const group of ['gravel', 'clay', 'grout'] as const)
      expect(missingOf(reckoned, group)).toEqual([{ what: 'fills', path: 'annulus' }]);
  });
});

describe('clay', () => {
  const seal = { from: 0, to: 2, fill: 'claySeal' } as const;

  it('comes dry, with the practice’s extra and without swelling', () => {
    // 142.55 / 12 × 2 = 23.758 L; × 1.1 = 26.134 L; × 1.1 kg/l (trade data give 1.0 to 1.2, from
    // memory) = 28.75 kg: 2 sacks of 25 kg.
    const reckoned = reckon(cased(165, 110, 12, seal));
    expect(off(valueOf(reckoned, 'clayLitres'), 26.134)).toBeLessThan(0.001);
    expect(off(valueOf(reckoned, 'clayKg'), 28.75)).toBeLessThan(0.001);
    expect(valueOf(reckoned, 'claySacks')).toBe(2);
  });

  it('is less where the practice counts on swelling', () => {
    const [plain, swollen] = [1, 2].map((claySwellRatio) =>
      valueOf(
        reckon(cased(165, 110, 12, { ...seal, fill: 'bentonite' }), { claySwellRatio }),
        'clayKg',
      ),
    );
    expect(plain! / swollen!).toBeCloseTo(2, 9);
  });
});
