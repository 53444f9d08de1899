import { describe, expect, it } from 'vitest';
import { cased, off, reckon, those, valueOf } from '../reckoned.ts';

const grout = (waterCement?: number) =>
  ({ from: 0, to: 12, fill: 'cementGrout', ...(waterCement && { waterCement }) }) as const;
const bare = { groutExtraShare: 0 };

describe('cement grout', () => {
  // Slurry of a sack of 50 kg and sacks a cubic metre, by grains of 3.15 kg/l (cement handbooks,
  // from memory): V = 50 / 3.15 + water. Tolerance 0.5 %.
  const table = [
    [0.4, 20.0, 35.87, 27.9],
    [0.42, 21.0, 36.87, 27.1],
    [0.45, 22.5, 38.37, 26.1],
    [0.5, 25.0, 40.87, 24.5],
    [0.55, 27.5, 43.37, 23.1],
    [0.6, 30.0, 45.87, 21.8],
  ] as const;

  it.each(table)('at a water to cement ratio of %f', (ratio, water, slurry, sacksPerM3) => {
    const reckoned = reckon(cased(165, 110, 12, grout(ratio)), bare);
    const [litres, kg] = [valueOf(reckoned, 'groutLitres')!, valueOf(reckoned, 'groutCementKg')!];
    expect(off((litres / kg) * 50, slurry)).toBeLessThan(0.005);
    expect(off(kg / 50 / (litres / 1000), sacksPerM3)).toBeLessThan(0.005);
    expect(off((valueOf(reckoned, 'groutWaterLitres')! / kg) * 50, water)).toBeLessThan(0.005);
  });

  it('takes the ratio of its own fill, else the practice’s', () => {
    const ratioOf = (waterCement?: number) =>
      those(reckon(cased(165, 110, 12, grout(waterCement))), 'groutZoneCementKg')[0]!.inputs.at(-1);
    expect(ratioOf(0.45)).toMatchObject({ value: 0.45, from: { path: 'annulus[0].waterCement' } });
    expect(ratioOf()).toMatchObject({ value: 0.5, from: { figure: 'groutWaterCement' } });
  });

  it('of 142.55 litres with a tenth more takes 191.8 kg of cement: 4 sacks', () => {
    // 142.55 × 1.1 / 40.87 × 50 = 191.8.
    const reckoned = reckon(cased(165, 110, 12, grout()));
    expect(off(valueOf(reckoned, 'groutCementKg'), 191.8)).toBeLessThan(0.005);
    expect(valueOf(reckoned, 'groutCementSacks')).toBe(4);
  });
});
