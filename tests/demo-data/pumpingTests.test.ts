import { describe, expect, test } from 'vitest';
import type { PumpingTest } from '../../core/record/water.ts';
import { drawdown, storageMinutes, wellFunction, type Aquifer, type Change } from './theis.ts';
import { readme, well } from './wells.ts';

const aquifer = (
  transmissivity: number,
  storage: number,
  radiusM: number,
  casingRadiusM: number,
  loss: number,
): Aquifer => ({ transmissivity, storage, radiusM, casingRadiusM, loss });

/** What the series were made from, as the read-me says. */
const aquifers: [string, Aquifer][] = [
  ['hand-drilled-32m.json', aquifer(60, 5e-4, 0.0825, 0.0508, 6e-5)],
  ['two-screens-58m.json', aquifer(95, 4e-4, 0.1, 0.0577, 3e-5)],
  ['shallow-direct-action-9m.json', aquifer(25, 0.05, 0.1, 0.0508, 8e-5)],
  ['telescoped-in-granite.json', aquifer(15, 2e-4, 0.0825, 0.0723, 1.2e-4)],
  ['sixty-intervals-58m.json', aquifer(40, 1e-3, 0.1, 0.0577, 1.5e-4)],
];

/** The changes of rate behind a test, with the minute of its first reading's clock. */
function schedule(pumping: PumpingTest): Change[] {
  const { kind, rate = 0, minutesPumped = 0, series = [] } = pumping;
  if (kind === 'constantRate') return [{ minute: 0, by: rate }];
  if (kind === 'recovery')
    return [
      { minute: 0, by: rate },
      { minute: minutesPumped, by: -rate },
    ];
  const rates = [...new Set(series.map((reading) => reading.rate ?? NaN))];
  const each = minutesPumped / rates.length;
  return rates.map((step, at) => ({ minute: at * each, by: step - (rates[at - 1] ?? 0) }));
}

/** The minute since pumping began at which the clock of a reading stood at zero. */
function clockZero(changes: readonly Change[], kind: PumpingTest['kind'], step = 1): number {
  return (kind === 'recovery' ? changes.at(-1) : changes[step - 1])?.minute ?? NaN;
}

function misfits(pumping: PumpingTest, ground: Aquifer): number[] {
  const changes = schedule(pumping);
  return (pumping.series ?? [])
    .filter(({ minutes }) => minutes > 2 * storageMinutes(ground))
    .map(({ minutes, reading, step }) => {
      const minute = clockZero(changes, pumping.kind, step) + minutes;
      return reading - (pumping.restLevel ?? NaN) - drawdown(ground, changes, minute);
    });
}

/** Slope in metres a log cycle of time, by least squares. */
function slopePerCycle(points: readonly (readonly [number, number])[]): number {
  const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const across = points.reduce((sum, [px, py]) => sum + (px - x) * (py - y), 0);
  return across / points.reduce((sum, [px]) => sum + (px - x) ** 2, 0);
}

describe('the pumping tests of the demo wells', () => {
  test('are checked with the well function of the printed tables', () => {
    // Wenzel 1942; Abramowitz and Stegun chapter 5.
    expect(wellFunction(1e-5)).toBeCloseTo(10.93572, 5);
    expect(wellFunction(0.01)).toBeCloseTo(4.0379296, 6);
    expect(wellFunction(0.5)).toBeCloseTo(0.55977359, 7);
  });

  // Readings are to the centimetre; what the casing stores still tells by less than 1 %.
  test.each(aquifers)('%s: late readings lie on Theis summed over the rates', (name, ground) => {
    for (const pumping of well(name).tests ?? []) {
      const all = misfits(pumping, ground);
      expect(all.length).toBeGreaterThan(3);
      const end = drawdown(ground, schedule(pumping), pumping.minutesPumped ?? NaN);
      const allowed = 0.01 + 0.01 * end;
      expect(Math.max(...all.map(Math.abs))).toBeLessThan(allowed);
    }
  });

  test.each(aquifers)('%s: no reading outruns what the casing could give', (name, ground) => {
    for (const { kind, rate = 0, restLevel = NaN, series = [] } of well(name).tests ?? []) {
      if (kind !== 'constantRate') continue;
      const most = rate / 60 / (Math.PI * ground.casingRadiusM ** 2);
      for (const { minutes, reading } of series)
        expect(reading - restLevel).toBeLessThan(most * minutes);
    }
  });

  // Cooper and Jacob 1946: T = 0.1832 Q / slope. A centimetre in a flat line costs some per cent.
  test.each(aquifers)('%s: the late straight line gives T again', (name, ground) => {
    const pumping = well(name).tests?.find(({ kind }) => kind === 'constantRate');
    const late = (pumping?.series ?? []).filter(
      ({ minutes }) => minutes > 2 * storageMinutes(ground),
    );
    const slope = slopePerCycle(late.map((at) => [Math.log10(at.minutes), at.reading]));
    const found = (0.1832 * 24 * (pumping?.rate ?? NaN)) / slope;
    expect(Math.abs(found / ground.transmissivity - 1)).toBeLessThan(0.06);
  });

  test.each(aquifers)('%s: its ground is told in the read-me', (name, ground) => {
    const row = readme()
      .split('\n')
      .find((line) => line.startsWith(`| \`${name}\``) && line.includes('m²/d'));
    expect(row).toContain(`| ${ground.transmissivity} m²/d |`);
  });

  test.each(aquifers)('%s: the levels repeat the ends of the tests', (name) => {
    const { tests = [], levels = [] } = well(name);
    const last = (kind: PumpingTest['kind']) =>
      tests.find((pumping) => pumping.kind === kind)?.series?.at(-1)?.reading;
    const read = (state: string) => levels.find((level) => level.state === state)?.reading;
    expect(read('pumping')).toBe(last('constantRate'));
    expect(read('recovering')).toBe(last('recovery'));
  });
});
