import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { TestReading } from '../../../core/hydraulics/results.ts';
import type { Drawdowns } from '../../../core/hydraulics/setting.ts';

const folder = path.join(import.meta.dirname, '../../data/pumping-tests');

/** Rows of a published table as pairs of numbers; see tests/data/README.md. */
export function table(name: string): [number, number][] {
  const lines = readFileSync(path.join(folder, name), 'utf8').trim().split(/\r?\n/).slice(1);
  return lines.map((line) => line.split(',').map(Number) as [number, number]);
}

/** Pairs of minutes and drawdown (m) of one rate (m³/d) as drawdowns ready for methods. */
export function drawdowns(pairs: readonly (readonly [number, number])[], rateM3d: number) {
  const readings = pairs.map(([minutes, drawdownM], at): TestReading => ({
    path: `tests[0].series[${at}]`,
    minutes,
    drawdownM,
    rateM3d,
  }));
  return { readings, leftOut: [], rates: [{ fromMin: 0, rateM3d }] } satisfies Drawdowns;
}

/** Oude Korendijk, 788 m³/d: Wit 1963, in Kruseman and de Ridder, ILRI Publication 47. */
export const oudeKorendijk = {
  rateM3d: 788,
  at30: table('oude-korendijk-r30.csv'),
  at90: table('oude-korendijk-r90.csv'),
};

/** Todd, Groundwater Hydrology, 2nd edition, chapter 4; from memory. 2500 m³/d, 60 m away. */
export const todd = {
  rateM3d: 2500,
  distanceM: 60,
  pumpedMin: 240,
  drawdown: [
    [1, 0.2],
    [1.5, 0.27],
    [2, 0.3],
    [2.5, 0.34],
    [3, 0.37],
    [4, 0.41],
    [5, 0.45],
    [6, 0.48],
    [8, 0.53],
    [10, 0.57],
    [12, 0.6],
    [14, 0.63],
    [18, 0.67],
    [24, 0.72],
    [30, 0.76],
    [40, 0.81],
    [50, 0.85],
    [60, 0.9],
    [80, 0.93],
    [100, 0.96],
    [120, 1],
    [150, 1.04],
    [180, 1.07],
    [210, 1.1],
    [240, 1.12],
  ] as [number, number][],
  residual: [
    [1, 0.89],
    [2, 0.81],
    [3, 0.76],
    [5, 0.68],
    [7, 0.64],
    [10, 0.56],
    [15, 0.49],
    [20, 0.45],
    [30, 0.38],
    [40, 0.34],
    [60, 0.28],
    [80, 0.24],
    [100, 0.21],
    [140, 0.17],
    [180, 0.14],
  ] as [number, number][],
};

/** Clark 1977, well 1, in Kruseman and de Ridder: rates in m³/d. */
export const clarkRates = [1306, 1693, 2423, 3261, 4094, 5019];
