import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Proposal } from '../../../core/layingOut/proposal.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { RuleCode } from '../../../core/practice/rules/ruleCodes.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { clay, laidOut, logOf, plain, sand, screen, slotsOf, wellOf } from './wells.ts';

const bed = fc.constantFrom<Omit<LogInterval, 'from' | 'to'>>(
  clay,
  sand,
  sand,
  { material: 'granite' },
  { material: 'silt' },
  { material: 'gravel' },
);

const wells = fc
  .record({
    beds: fc.array(fc.tuple(fc.integer({ min: 3, max: 120 }), bed), {
      minLength: 3,
      maxLength: 16,
    }),
    drySeasonLevel: fc.integer({ min: 2, max: 15 }),
    drawdown: fc.integer({ min: 0, max: 6 }),
    plains: fc.integer({ min: 2, max: 20 }),
    shorts: fc.integer({ min: 0, max: 3 }),
    screens: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ beds, plains, shorts, screens, ...water }) => {
    let foot = 0;
    const laid = beds.map(([thick, one]): [number, typeof one] => {
      foot = Math.round(foot * 10 + thick) / 10;
      return [foot, one];
    });
    const pipes = [plain(plains), plain(shorts, 1.6), screen(screens), screen(1, 1.2)];
    return wellOf(logOf(...laid), { ...water, pipes });
  });

/** What the search sees to wherever nothing stands in the way. */
const sought: readonly RuleCode[] = [
  'pack.low',
  'pack.bare',
  'clay.thin',
  'seal.short',
  'seal.none',
  'sump.length',
  'foot.open',
  'stickUp.height',
  'screened.ground',
  'screened.dry',
  'screened.pumping',
  'screened.velocity',
  'aquifers.joined',
  'aquifers.screened',
  'centraliser.spacing',
];

/** A tally uses no pipe that is not on site, and adds up to what the model makes of its string. */
function checkTally({ tally, strings, cuts }: Proposal, well: WellRecord) {
  const pipes = well.layingOut!.pipes!;
  for (const [at, { count }] of pipes.entries())
    expect(tally.filter(({ pipe }) => pipe === at).length).toBeLessThanOrEqual(count!);
  expect(tally.filter(({ cutToM }) => cutToM !== undefined)).toHaveLength(cuts);
  expect(tally.map(({ number }) => number)).toEqual(tally.map((_, at) => at + 1));
  const pieces = resolveWell({ ...well, strings }).strings[0]!.pieces.toReversed();
  expect(pieces.map(({ kind, topM, bottomM }) => ({ kind, topM, bottomM }))).toEqual(
    tally.slice(1).map(({ kind, topM, bottomM }) => ({ kind, topM, bottomM })),
  );
}

/** Fills follow on each other from the ground to the foot of the hole. */
function checkFills({ annulus }: Proposal, well: WellRecord) {
  expect(annulus[0]?.from).toBe(0);
  expect(annulus.at(-1)?.to).toBe(well.bore!.depthReached);
  for (const [at, { from, to }] of annulus.entries()) {
    expect(to).toBeGreaterThan(from);
    if (at > 0) expect(from).toBe(annulus[at - 1]!.to);
  }
}

test('every proposal adds up, uses what is on site, and is sound by model and rules', () => {
  let proposed = 0;
  fc.assert(
    fc.property(wells, (well) => {
      const { proposals, obstacles } = laidOut(well);
      if (proposals.length === 0) expect(obstacles.length).toBeGreaterThan(0);
      const seen = new Set(proposals.map((one) => JSON.stringify(one.tally)));
      expect(seen.size).toBe(proposals.length);
      for (const proposal of proposals) {
        proposed += 1;
        checkTally(proposal, well);
        checkFills(proposal, well);
        const { strings, annulus } = proposal;
        const model = resolveWell({ ...well, strings, annulus });
        expect(model.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
        const grave = proposal.findings.filter(({ severity }) => severity === 'error');
        expect(grave).toEqual([]);
        expect(slotsOf(proposal)[0]).toBeGreaterThanOrEqual(well.layingOut!.drySeasonLevel!);
      }
      if (obstacles.length === 0)
        for (const { findings } of proposals)
          expect(findings.filter(({ code }) => sought.some((one) => one === code))).toEqual([]);
    }),
    { numRuns: 80, seed: 20240607 },
  );
  expect(proposed).toBeGreaterThan(40);
}, 120_000);
