import { describe, expect, it } from 'vitest';
import {
  collapseKPa,
  dimensionRatio,
  inWarmthKPa,
  waterKPaPerM,
} from '../../../../core/practice/strength/collapse.ts';
import { groutKgL } from '../../../../core/practice/strength/grout.ts';

const pvc = { modulusMPa: 2758, poisson: 0.38 };
const kPaPerPsi = 6.894757;

/** Within a share of the expected value. */
function near(value: number, expected: number, share: number): void {
  expect(Math.abs(value / expected - 1), `${value} against ${expected}`).toBeLessThan(share);
}

describe('collapse of a PVC pipe', () => {
  // ASTM F480's formula with E = 400 000 psi and ν = 0.38 (from memory): SDR and kilopascals.
  it.each([
    [11, 5861],
    [13.5, 3056],
    [13.6, 2986],
    [17, 1481],
    [21, 767],
    [26, 397],
    [32.5, 200],
    [33, 191],
    [41, 98],
  ])('of SDR %d comes at %d kPa', (ratio, expectedKPa) => {
    near(collapseKPa(ratio, pvc), expectedKPa, 0.01);
  });

  // The same with ν = 0.33, as a published engineers' note has it, in psi.
  it.each([
    [17, 206.3],
    [26, 55.2],
    [41, 13.7],
  ])('of SDR %d with ν = 0.33 comes at %d psi', (ratio, psi) => {
    near(collapseKPa(ratio, { modulusMPa: 2758, poisson: 0.33 }) / kPaPerPsi, psi, 0.01);
  });

  // Sizes of ISO 1452, DIN 4925 and schedule 40 and 80 (from memory) with the formula above.
  it.each([
    [110, 3.4, 203],
    [110, 4.2, 388],
    [125, 4.8, 395],
    [160, 7.7, 793],
    [113, 5, 611],
    [165, 7.5, 664],
    [114.3, 6.02, 1049],
    [114.3, 8.56, 3164],
  ])('of %d × %d mm comes at %d kPa', (outsideMm, wallMm, expectedKPa) => {
    near(collapseKPa(dimensionRatio(outsideMm, wallMm), pvc), expectedKPa, 0.01);
  });

  const heat = { ratedAtC: 21, lossPercentPerC: 0.8 };

  // Modulus of PVC 12454 against temperature, handbooks of PVC pipe (from memory): 400 000 psi at
  // 73 °F, 372 000 at 90, 336 000 at 110, 280 000 at 140.
  it.each([
    [32.2, 372],
    [43.3, 336],
    [60, 280],
  ])('comes earlier in the warmth, at %d °C with a modulus of %d thousand psi', (atC, thousand) => {
    near(inWarmthKPa(400, atC, heat), thousand, 0.03);
  });

  it('loses half a psi for each °F above 70 °F, as a published note has it, at SDR 21', () => {
    const ratedKPa = collapseKPa(21, pvc);
    near(ratedKPa - inWarmthKPa(ratedKPa, 31, heat), 0.5 * 18 * kPaPerPsi, 0.02);
  });

  it('is as rated in the cold, and never less than nothing', () => {
    expect(inWarmthKPa(400, 15, heat)).toBe(400);
    expect(inWarmthKPa(98, 200, heat)).toBe(0);
  });

  it('of casing bailed dry from 5 m to 30 m: SDR 33 fails, 26 holds 1.62 times, 21 3.13 times', () => {
    const loadKPa = 25 * waterKPaPerM;
    near(loadKPa, 245, 0.005);
    expect(collapseKPa(33, pvc)).toBeLessThan(loadKPa);
    near(collapseKPa(26, pvc) / loadKPa, 1.62, 0.01);
    near(collapseKPa(21, pvc) / loadKPa, 3.13, 0.01);
  });
});

describe('the density of cement grout', () => {
  // Cement handbooks (from memory), grain density 3.15.
  it.each([
    [0.4, 1.951],
    [0.42, 1.926],
    [0.45, 1.889],
    [0.5, 1.835],
    [0.55, 1.787],
    [0.6, 1.744],
    [0.462, 1.876],
  ])('at water to cement %d is %d t/m³', (waterCement, expected) => {
    near(groutKgL(waterCement, 3.15), expected, 0.005);
  });

  it('presses 163.8 kPa on a casing full of water at the foot of 20 m', () => {
    near((groutKgL(0.5, 3.15) - 1) * 20 * waterKPaPerM, 163.8, 0.005);
  });
});
