import { expect, test } from 'vitest';
import { differences } from '../../../core/layingOut/differences.ts';
import { takeProposal } from '../../../core/layingOut/takeProposal.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { readRecord } from '../../../core/record/read.ts';
import { clay, laidOut, logOf, plain, sand, screen, wellOf } from './wells.ts';

const well = wellOf(logOf([20, clay], [34, sand], [38, clay]), {
  drySeasonLevel: 12,
  drawdown: 3,
  pipes: [plain(12), screen(3)],
});
const [proposal] = laidOut(well).proposals;
const taken = takeProposal(well, proposal!, '2026-03-02', practiceOf(well));

test('a proposal that was taken fills strings and annulus, and is kept beside them', () => {
  expect(taken.strings).toEqual(proposal!.strings);
  expect(taken.annulus).toEqual(proposal!.annulus);
  expect(taken.layingOut?.proposal).toEqual({
    kind: proposal!.kind,
    takenOn: '2026-03-02',
    practice: 'handDrilled 1.0',
    strings: proposal!.strings,
    annulus: proposal!.annulus,
  });
  expect(taken.layingOut?.pipes).toEqual(well.layingOut?.pipes);
  expect(well.strings).toBeUndefined();
  const read = readRecord(taken);
  expect(read).toMatchObject({ record: taken, troubles: [] });
});

test('what was built as laid out differs in nothing', () => {
  const told = differences(taken, resolveWell(taken));
  expect(told.length).toBeGreaterThan(6);
  expect(told.every(({ differenceM }) => differenceM === 0)).toBe(true);
});

test('a string that hung 0.35 m higher and a seal that was left out are told part by part', () => {
  const [string] = taken.strings!;
  const depth = string!.set?.by === 'bottom' ? string!.set.depth - 0.35 : NaN;
  const built = {
    ...taken,
    strings: [{ ...string!, set: { by: 'bottom', depth } as const }],
    annulus: taken.annulus!.filter(({ fill }) => fill !== 'claySeal'),
  };
  const told = differences(built, resolveWell(built));
  const screens = told.filter(({ part }) => part === 'screen');
  expect(screens.map(({ edge, differenceM }) => [edge, differenceM])).toEqual([
    ['top', -0.35],
    ['foot', -0.35],
  ]);
  const clays = told.filter(({ fill }) => fill === 'claySeal');
  expect(clays).toHaveLength(2);
  for (const seal of clays) expect('builtM' in seal).toBe(false);
});

test('nothing is compared where no proposal was kept', () => {
  expect(differences(well, resolveWell(well))).toEqual([]);
});

test('of two seals planned, one built is told beside the nearer one', () => {
  const log = logOf([8, clay], [12, sand], [16, clay], [26, sand], [30, clay]);
  const two = wellOf(log, { drySeasonLevel: 9, drawdown: 3, pipes: [plain(10), screen(1)] });
  const [first] = laidOut(two).proposals;
  const plan = takeProposal(two, first!, '2026-03-02', practiceOf(two));
  const seals = plan.annulus!.filter(({ fill }) => fill === 'claySeal');
  expect(seals).toHaveLength(2);
  const built = { ...plan, annulus: plan.annulus!.filter((fill) => fill !== seals[0]) };
  const told = differences(built, resolveWell(built)).filter(({ fill }) => fill === 'claySeal');
  expect(told.map(({ number, differenceM }) => [number, differenceM])).toEqual([
    [1, undefined],
    [1, undefined],
    [2, 0],
    [2, 0],
  ]);
});
