import fc from 'fast-check';
import { expect, test } from 'vitest';
import { differences } from '../../../core/layingOut/differences.ts';
import { layOut } from '../../../core/layingOut/layOut.ts';
import { takeProposal } from '../../../core/layingOut/takeProposal.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { clay, laidOut, logOf, plain, sand, screen, wellOf } from './wells.ts';

const wild = fc.oneof(
  fc.constantFrom(0, -1, 0.004, 0.3, 1e4, 1e9, Infinity, NaN),
  fc.double({ min: -5, max: 60 }),
);

/** Mostly what it should be. */
const figure = (sane: number) => fc.oneof({ weight: 5, arbitrary: fc.constant(sane) }, wild);

const pipe = (kind: 'plain' | 'screen') =>
  fc.record(
    {
      kind: fc.constant(kind),
      count: figure(kind === 'plain' ? 9 : 2),
      length: figure(3),
      insertion: figure(0.1),
      outside: figure(125),
      openArea: figure(5),
    },
    { requiredKeys: ['kind'] },
  );

const garbage = fc.record({
  depth: figure(28),
  found: figure(27.6),
  diameter: figure(250),
  dry: figure(9),
  drawdown: figure(3),
  stickUp: figure(0.4),
  rate: figure(1),
  pipes: fc
    .tuple(fc.array(pipe('plain'), { maxLength: 3 }), fc.array(pipe('screen'), { maxLength: 3 }))
    .map((both) => both.flat()),
});

test('field data that cannot be are never thrown at', () => {
  let proposed = 0;
  fc.assert(
    fc.property(garbage, ({ depth, found, diameter, dry, pipes, ...rest }) => {
      const well = wellOf(logOf([8, clay], [24, sand], [28, clay]), {
        ...rest,
        drySeasonLevel: dry,
        pipes,
      });
      well.bore = {
        sections: [{ from: 0, to: depth, diameter }],
        depthReached: depth,
        depthFound: found,
      };
      for (const proposal of laidOut(well).proposals) {
        proposed += 1;
        const taken = takeProposal(well, proposal, '2026-03-02', practiceOf(well));
        expect(differences(taken, resolveWell(taken)).length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 200, seed: 20240607 },
  );
  expect(proposed).toBeGreaterThan(20);
}, 120_000);

test('a hole of a million metres is asked for again', () => {
  const well = wellOf(logOf([20, clay], [34, sand], [1e6, clay]), {
    drySeasonLevel: 12,
    pipes: [plain(12), screen(3)],
  });
  const { missing } = layOut(well, resolveWell(well), practiceOf(well));
  expect(missing[0]).toEqual({ what: 'boreDepth', path: 'bore.depthReached', stops: true });
});
