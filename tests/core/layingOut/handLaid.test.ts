import { describe, expect, test } from 'vitest';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { well as demoWell } from '../../demo-data/wells.ts';
import { clay, fillsOf, laidOut, logOf, plain, sand, screen, slotsOf, wellOf } from './wells.ts';

/**
 * Completions as a supervisor would lay them by hand, with the reasoning; common practice of the
 * trade. A proposal has to match or to better them.
 */

describe('one thick aquifer under clay: 14 m of sand, water at 12 m, a hand pump', () => {
  const well = wellOf(logOf([20, clay], [34, sand], [38, clay]), {
    drySeasonLevel: 12,
    drawdown: 3,
    pipes: [plain(12), screen(3)],
  });
  const { proposals } = laidOut(well);

  /**
   * By hand: the sump goes into the clay under the sand, 34 to 37 m; on it two screens, since the
   * lower third of the sand is 4.7 m: 28.20 to 34.00 m. Up to a stick-up of 0.30 m are 28.50 m:
   * nine pipes give 26.10 m, the tenth is cut to 2.50 m. Pack to 26.20 m, clay to 24.20 m.
   */
  test('the safest has two screens at the foot of the sand, and one cut', () => {
    const safest = proposals.find(({ kind }) => kind === 'safest')!;
    expect(slotsOf(safest)).toEqual([28.2, 34]);
    expect(safest.cuts).toBe(1);
    expect(safest.tally.find(({ cutToM }) => cutToM !== undefined)).toMatchObject({
      kind: 'plain',
      cutToM: 2.5,
    });
    expect(fillsOf(safest)).toEqual([
      '0–3 cementGrout',
      '3–24.2 backfill',
      '24.2–26.2 claySeal',
      '26.2–38 gravelPack',
    ]);
  });

  /**
   * By hand: all three screens, 8.70 m, wholly in the sand. Eight whole pipes above them take up
   * 23.20 m: slots from 22.90 to 31.60 m at a stick-up of 0.30 m, and nothing is cut.
   */
  test('the most productive has all three screens in the sand, and no cut', () => {
    const most = proposals.find(({ kind }) => kind === 'mostProductive')!;
    expect(slotsOf(most)).toEqual([22.9, 31.6]);
    expect(most.cuts).toBe(0);
    expect(most.screenM).toBe(8.7);
  });
});

/**
 * By hand: the upper sand lies near the latrines' depth and is left alone; the lower one is
 * screened at its foot with the sump in the clay below. 8 m of sand ask for 2.7 m: one screen. Eight
 * whole pipes above it take up 23.20 m: slots from 22.90 to 25.80 m, and a cut for the last 0.20 m
 * is not worth it. A seal stands in the clay from 14 to 18 m that parts the two.
 */
test('of two aquifers one is screened, and a seal stands in the clay between', () => {
  const log = logOf([8, clay], [14, sand], [18, clay], [26, sand], [30, clay]);
  const well = wellOf(log, { drySeasonLevel: 9, drawdown: 3, pipes: [plain(10), screen(4)] });
  const { proposals } = laidOut(well);
  const safest = proposals.find(({ kind }) => kind === 'safest')!;
  expect(slotsOf(safest)).toEqual([22.9, 25.8]);
  expect(safest.cuts).toBe(0);
  for (const proposal of proposals) {
    const [topM, footM] = slotsOf(proposal);
    expect(topM).toBeGreaterThanOrEqual(18);
    expect(footM).toBeLessThanOrEqual(26);
    const packs = proposal.annulus.filter(({ fill }) => fill === 'gravelPack');
    expect(packs.every(({ from }) => from >= 14.5)).toBe(true);
    const seals = proposal.annulus.filter(({ fill }) => fill === 'claySeal');
    const between = seals.map(({ from, to }) => Math.min(to, 18) - Math.max(from, 14));
    expect(Math.max(...between)).toBeGreaterThanOrEqual(0.5);
    const codes = proposal.findings.map(({ code }) => code);
    expect(codes).not.toContain('aquifers.joined');
    expect(codes).not.toContain('aquifers.screened');
  }
});

/**
 * By hand: 2 m of coarse sand lie on rock that gives nothing. All of it is screened and nothing
 * else: the screen is cut to 2.10 m, of which 0.10 m stand in the bell below.
 */
test('a thin aquifer on rock gets a screen cut to its thickness', () => {
  const rock = { material: 'granite', moisture: 'dry', weathering: 'fresh' } as const;
  const well = wellOf(logOf([24, clay], [26, sand], [32, rock]), {
    drySeasonLevel: 10,
    drawdown: 4,
    pipes: [plain(11), screen(2)],
  });
  const safest = laidOut(well).proposals.find(({ kind }) => kind === 'safest')!;
  expect(slotsOf(safest)).toEqual([24, 26]);
  expect(safest.tally.find(({ kind }) => kind === 'screen')).toMatchObject({ cutToM: 2.1 });
});

test('the laid-out demo well is bettered: as much screen in the sand, and no pipe cut', () => {
  const record = demoWell('laid-out-45m.json');
  const { proposals, missing, obstacles } = laidOut(record);
  const byHand = resolveWell(record).strings[0]!.pieces.filter(({ kind }) => kind === 'screen');
  const most = proposals.find(({ kind }) => kind === 'mostProductive')!;
  const [topM, footM] = slotsOf(most);
  expect([missing, obstacles]).toEqual([[], []]);
  expect(footM - topM).toBeCloseTo(byHand.at(-1)!.bottomM - 0.14 - byHand[0]!.topM, 6);
  expect(topM).toBeGreaterThanOrEqual(34);
  expect(footM).toBeLessThanOrEqual(44.2);
  expect(most.cuts).toBe(0);
});
