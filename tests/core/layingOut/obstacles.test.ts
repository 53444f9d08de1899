import { describe, expect, test } from 'vitest';
import type { LayingOut } from '../../../core/record/layingOut.ts';
import { clay, laidOut, logOf, plain, sand, screen, wellOf } from './wells.ts';

const water: LayingOut = { drySeasonLevel: 12, drawdown: 3 };
const log = logOf([20, clay], [34, sand], [38, clay]);
const enough = { ...water, pipes: [plain(12), screen(3)] };

function codesOf(well: Parameters<typeof laidOut>[0]): string[] {
  return laidOut(well).obstacles.map(({ code }) => code);
}

describe('where nothing meets the practice, the limit in the way is named', () => {
  test('nothing stands in the way of a well with enough of all', () => {
    expect(codesOf(wellOf(log, enough))).toEqual([]);
  });

  test('no ground that conducts', () => {
    const well = wellOf(logOf([38, clay]), enough);
    expect(codesOf(well)).toEqual(['noConductingGround']);
    expect(laidOut(well).proposals).toEqual([]);
  });

  test('all of it above the dry level', () => {
    const well = wellOf(logOf([10, clay], [14, sand], [38, clay]), {
      ...enough,
      drySeasonLevel: 15,
    });
    expect(codesOf(well)).toEqual(['groundAboveDryLevel']);
  });

  test('too few plain pipes', () => {
    const well = wellOf(log, { ...water, pipes: [plain(4), screen(3)] });
    expect(codesOf(well)).toEqual(['plainPipesTooFew']);
    expect(laidOut(well).obstacles[0]?.values).toEqual({ plainM: 12 });
  });

  test('too little screen for the rate: 5.80 m, half of it clogged, let in 6 m³/h at 0.03 m/s', () => {
    const well = wellOf(log, { ...enough, rate: 10, pipes: [plain(12), screen(2)] });
    const { obstacles, proposals } = laidOut(well);
    expect(obstacles.map(({ code }) => code)).toEqual(['screensTooFew', 'entranceTooFast']);
    expect(proposals.length).toBeGreaterThan(0);
    expect(proposals[0]?.findings.map(({ code }) => code)).toContain('screened.velocity');
  });

  test('a hole that is too narrow for the pipes', () => {
    const well = wellOf(log, enough);
    const narrow = { ...well, bore: { sections: [{ from: 0, to: 38, diameter: 150 }] } };
    expect(codesOf(narrow)).toEqual(['annulusTooNarrow']);
  });

  test('a hole that ends with the aquifer has no room for a sump', () => {
    const well = wellOf(logOf([20, clay], [20.8, sand]), enough);
    expect(codesOf(well)).toContain('holeTooShallowForSump');
  });

  test('a shallow well is laid out short of pack and clay, but not gravely', () => {
    const shallow = wellOf(logOf([2, clay], [5.4, sand], [11, clay]), {
      drySeasonLevel: 3,
      drawdown: 1,
      pipes: [plain(5), screen(1)],
    });
    const { obstacles, proposals } = laidOut(shallow);
    expect(obstacles.map(({ code }) => code)).toContain('noRoomForPackAndSeals');
    expect(proposals.length).toBeGreaterThan(0);
    for (const { findings } of proposals)
      expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});

describe('what is lacking', () => {
  test('a bare record lacks what laying out starts from', () => {
    const { missing, proposals, obstacles } = laidOut({ schemaVersion: 1 });
    const stopping = missing.filter(({ stops }) => stops).map(({ what }) => what);
    expect(stopping).toEqual(['log', 'boreDepth', 'restLevel', 'plainPipes', 'screenPipes']);
    expect([proposals, obstacles]).toEqual([[], []]);
  });

  test('without rate and drawdown it is laid out all the same, and both are said to lack', () => {
    const well = wellOf(log, { ...enough });
    delete well.layingOut!.rate;
    delete well.layingOut!.drawdown;
    const { missing, proposals } = laidOut(well);
    expect(missing).toEqual([
      { what: 'designRate', path: 'layingOut.rate', stops: false },
      { what: 'drawdown', path: 'layingOut.drawdown', stops: false },
    ]);
    expect(proposals.length).toBeGreaterThan(0);
  });

  test('a screen whose open area nobody wrote is laid out, whatever the rate', () => {
    const { openArea, ...bare } = screen(3);
    expect(openArea).toBe(5);
    const { missing, proposals } = laidOut(wellOf(log, { ...enough, pipes: [plain(12), bare] }));
    expect(missing).toEqual([
      { what: 'openArea', path: 'layingOut.pipes[1].openArea', stops: false },
    ]);
    expect(proposals.length).toBeGreaterThan(0);
  });

  test('pipes of another diameter make a string of their own', () => {
    const wide = [plain(12), screen(3)].map((pipe) => ({ ...pipe, outside: 160 }));
    const { proposals } = laidOut(
      wellOf(log, { ...enough, pipes: [plain(2), screen(3), ...wide] }),
    );
    expect(proposals.length).toBeGreaterThan(0);
    for (const { tally } of proposals)
      expect(tally.flatMap(({ pipe }) => pipe ?? []).every((pipe) => pipe >= 2)).toBe(true);
  });
});
