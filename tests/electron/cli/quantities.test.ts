import { describe, expect, it } from 'vitest';
import type { Quantities } from '../../../core/quantities/quantity.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const cased = {
  bore: {
    method: 'mudRotary',
    depthReached: 12,
    sections: [{ from: 0, to: 12, diameter: 165 }],
  },
  strings: [
    {
      set: { by: 'bottom', depth: 12 },
      components: [
        {
          kind: 'plain',
          count: 4,
          length: 3,
          outside: 110,
          wall: 4.2,
          material: 'uPVC',
          joint: 'glued bell',
        },
      ],
    },
  ],
  annulus: [{ from: 0, to: 12, fill: 'gravelPack' }],
};

describe('borefolio quantities', () => {
  it('prints amounts with what they are of, their formulas and inputs', async () => {
    const folder = ownFolder();
    const { code, out, err } = await type(folder, ['quantities', putRecord(folder, cased)]);
    expect(code).toBe(0);
    expect(err).toEqual([]);
    expect(out[0]).toBe('Practice: General: small-diameter hand-drilled wells, 1.0');
    // 142.55 L × 1.2 × 1.6 kg/l = 273.7 kg: 6 sacks of 50 kg.
    const sacks = out.find((line) => line.includes('sacks of gravel in all'))!;
    expect(sacks).toMatch(/ 6 sacks {2}n ≥ m \/ s; m = 273\.7 kg; s = 50 kg$/);
    expect(out.some((line) => line.includes('gravel pack 0.00–12.00 m: V = Vz · (1 + e)'))).toBe(
      true,
    );
  });

  it('says what is not known, and where it belongs', async () => {
    const folder = ownFolder();
    const bore = { depthReached: 12, sections: cased.bore.sections };
    const { out } = await type(folder, ['quantities', putRecord(folder, { ...cased, bore })]);
    expect(out).toContain('  not known: way of drilling (bore.method)');
  });

  it('prints the same as JSON', async () => {
    const folder = ownFolder();
    const { out } = await type(folder, ['quantities', putRecord(folder, cased), '--json']);
    const { groups } = JSON.parse(out.join('\n')) as Quantities;
    const gravel = groups.find(({ id }) => id === 'gravel')!;
    expect(gravel.missing).toEqual([]);
    expect(gravel.quantities.at(-1)).toMatchObject({ id: 'gravelSacks', value: 6, unit: 'sacks' });
  });

  it('ends with 1 where the record contradicts itself', async () => {
    const folder = ownFolder();
    const log = [
      { from: 0, to: 9 },
      { from: 5, to: 12 },
    ];
    const { code, err } = await type(folder, ['quantities', putRecord(folder, { ...cased, log })]);
    expect(code).toBe(1);
    expect(err).not.toEqual([]);
  });

  it('takes one file', async () => {
    const { code, err } = await type(ownFolder(), ['quantities']);
    expect(code).toBe(2);
    expect(err[0]).toContain('Name a file: borefolio quantities FILE.');
  });
});
