import { expect, it } from 'vitest';
import type { BinderWell } from '../../../../core/drawing/binder/binderWell.ts';
import { classesOf } from '../../../../core/drawing/binder/plots/classes.ts';
import { layPlots } from '../../../../core/drawing/binder/plots/layPlots.ts';
import { outcomeRow } from '../../../../core/drawing/binder/plots/success.ts';
import { medianOf } from '../../../../core/drawing/binder/statistics.ts';
import { textsOn } from '../../../sheets/placed.ts';
import { contentOf, demoBinderWells, kitIn } from './madeBinder.ts';

it('puts values in classes of one round width, each value in one', () => {
  const values = [0, 4.99, 5, 31, 44.2, 58];
  const classes = classesOf(values);
  expect(classes.map(({ from, count }) => [from, count])).toEqual([
    [0, 2],
    [5, 1],
    [10, 0],
    [15, 0],
    [20, 0],
    [25, 0],
    [30, 1],
    [35, 0],
    [40, 1],
    [45, 0],
    [50, 0],
    [55, 1],
  ]);
});

it('counts every value, however large or small', () => {
  for (const values of [[0.3], [0.1, 0.2, 0.3], [1e6, 3], [0, 0]]) {
    const counted = classesOf(values).reduce((sum, { count }) => sum + count, 0);
    expect(counted).toBe(values.length);
    expect(classesOf(values).length).toBeLessThanOrEqual(13);
  }
  expect(classesOf([])).toEqual([]);
});

it('takes the middle value, of an even count the mean of both', () => {
  expect(medianOf([3, 1, 2])).toBe(2);
  expect(medianOf([4, 1, 2, 3])).toBe(2.5);
  expect(medianOf([])).toBeUndefined();
});

const withOutcome = (outcome: BinderWell['outcome']): BinderWell => ({
  ...demoBinderWells[0]!,
  outcome,
});

it('counts wells with water, dry holes and all others apart', () => {
  const wells = [withOutcome('water'), withOutcome('dry'), withOutcome('open'), withOutcome('dry')];
  expect(outcomeRow('2026', wells).counts).toEqual({ water: 1, dry: 2, open: 1 });
});

const said = (wells: readonly BinderWell[]) =>
  layPlots(kitIn('en'), contentOf(wells)).pages.map((page) =>
    textsOn(page).map(({ item }) => item.text),
  );

it('writes a share only beside the counts that it is made of', () => {
  const texts = said(demoBinderWells).flat();
  const shares = texts.filter((text) => text.includes('%'));
  expect(shares.length).toBeGreaterThan(0);
  for (const share of shares) expect(share).toMatch(/^\d+ of \d+ with water \(\d+ %\)/);
});

it('counts results above a guideline value, and says of no water that it is safe', () => {
  const pages = said(demoBinderWells);
  const texts = pages.at(-1)!;
  const sampled = demoBinderWells.flatMap(({ quality }) => quality?.results ?? []);
  const iron = sampled.filter(({ parameter }) => parameter === 'iron');
  const above = iron.filter(({ limits }) => limits.some(({ state }) => state === 'above'));
  expect(above.length).toBeGreaterThan(0);
  expect(pages.flat()).toContain(`above 0.3: ${above.length} of ${iron.length}`);
  expect(texts.join(' ')).not.toMatch(/\bsafe\b/i);
});

it('says so where no well has a sample', () => {
  const { quality, ...without } = demoBinderWells.find((well) => well.quality)!;
  expect(quality).toBeDefined();
  expect(said([without]).flat().join(' ')).toContain('No well of this binder has a water sample');
});
