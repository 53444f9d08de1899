import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGround } from '../../../core/layingOut/ground.ts';
import type { Limits } from '../../../core/layingOut/limits.ts';
import type { Problem } from '../../../core/layingOut/problem.ts';
import { isPossible, search } from '../../../core/layingOut/search.ts';
import type { PipeKind } from '../../../core/layingOut/stock.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import { resolve } from '../model/well.ts';
import { bestOfEvery, type GroundKind } from './everyString.ts';

/** A small well: pipes hardly longer than the shortest piece, so that every string can be tried. */
const pipe = (screen: boolean) =>
  fc
    .record({
      lengthCm: fc.integer({ min: 52, max: 74 }),
      count: fc.integer({ min: 1, max: screen ? 2 : 3 }),
      openCm2PerCm: screen ? fc.integer({ min: 1, max: 3 }) : fc.constant(0),
    })
    .map((drawn) => ({ ...drawn, pipes: Array<number>(drawn.count).fill(0) }));

const limits: fc.Arbitrary<Limits> = fc.record({
  underDryCm: fc.constantFrom(0, 10),
  underPumpingCm: fc.constantFrom(0, 5, -Infinity),
  sumpLeastCm: fc.constantFrom(30, 55),
  sumpMostCm: fc.constantFrom(70, 130),
  packCm: fc.constantFrom(10, 30),
  clayCm: fc.constantFrom(10, 30),
  clayUnderGroutCm: fc.constantFrom(5, 15),
  partingClayCm: fc.constantFrom(5, 15),
  sanitaryCm: fc.constantFrom(20, 40),
  stickUpLeastCm: fc.constantFrom(10, 14),
  stickUpMostCm: fc.constantFrom(15, 18),
  aquitardCm: fc.constantFrom(15, 25),
  screenLeastCm: fc.constantFrom(0, 40, 250),
  tightShare: fc.constantFrom(0.1, 0.5),
  openAreaCm2: fc.constantFrom(0, 60),
});

const beds = fc.array(
  fc.record({
    thickCm: fc.integer({ min: 5, max: 90 }),
    kind: fc.constantFrom<GroundKind>('g', 'g', 't', 'u'),
  }),
  { minLength: 4, maxLength: 9 },
);

const small = fc.record({
  plains: fc.array(pipe(false), { minLength: 1, maxLength: 2 }),
  screens: fc.array(pipe(true), { minLength: 1, maxLength: 2 }),
  insertionCm: fc.constantFrom(0, 6),
  beds,
  limits,
  dryCm: fc.integer({ min: 20, max: 120 }),
  drawdownCm: fc.integer({ min: 0, max: 60 }),
});

const words: Readonly<Record<GroundKind, Partial<LogInterval>>> = {
  g: { material: 'sand' },
  t: { material: 'clay' },
  u: { material: 'granite' },
};

type Small = typeof small extends fc.Arbitrary<infer T> ? T : never;

function gather(kinds: readonly Omit<PipeKind, 'insertionCm'>[], insertionCm: number): PipeKind[] {
  const lengths = [...new Map(kinds.map((kind) => [kind.lengthCm, kind])).values()];
  return lengths.map((kind) => ({ ...kind, insertionCm })).sort((a, b) => b.lengthCm - a.lengthCm);
}

function problemOf(drawn: Small): { problem: Problem; ground: GroundKind[] } {
  const ground = drawn.beds.flatMap(({ thickCm, kind }) => Array<GroundKind>(thickCm).fill(kind));
  let topCm = 0;
  const log = drawn.beds.map(({ thickCm, kind }) => {
    const from = topCm / 100;
    topCm += thickCm;
    return { from, to: topCm / 100, ...words[kind] };
  });
  const holeCm = ground.length;
  const family = {
    outsideMm: 110,
    plains: gather(drawn.plains, drawn.insertionCm),
    screens: gather(drawn.screens, drawn.insertionCm),
    depthCm: holeCm,
  };
  const problem = {
    ground: readGround(resolve({ log }), holeCm, drawn.limits.aquitardCm),
    families: [family],
    limits: drawn.limits,
    holeCm,
    dryCm: drawn.dryCm,
    pumpingCm: drawn.dryCm + drawn.drawdownCm,
  };
  return { problem, ground };
}

test('the search finds what trying every string finds, for each aim and each number of cuts', () => {
  let possible = 0;
  fc.assert(
    fc.property(small, (drawn) => {
      const { problem, ground } = problemOf(drawn);
      const every = bestOfEvery(problem, ground);
      const found = new Map(
        search(problem).map(({ aim, screenCuts, plainCuts, criteria }) => [
          `${aim} ${screenCuts} ${plainCuts}`,
          criteria,
        ]),
      );
      expect([...found.keys()].sort()).toEqual([...every.keys()].sort());
      for (const [cell, criteria] of every)
        for (const [at, value] of criteria.entries())
          expect(found.get(cell)![at], `${cell}, criterion ${at}`).toBeCloseTo(value, 6);
      expect(isPossible(problem)).toBe(every.size > 0);
      possible += Number(every.size > 0);
    }),
    { numRuns: 200, seed: 20240607 },
  );
  expect(possible).toBeGreaterThan(40);
}, 120_000);
