import { describe, expect, it } from 'vitest';
import { well } from '../../../../demo-data/wells.ts';
import { pipeSteps } from '../../../../../core/drawing/papers/layingOut/pipeSteps.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';

const stepsOf = (record: WellRecord) =>
  pipeSteps(resolveWell(record).strings, record.layingOut?.pipes);
const runningOf = (name: string) =>
  stepsOf(well(name)).map(({ steps }) => steps.map(({ runningM }) => runningM));

describe('the running length of the demo wells, by the sums of their tallies', () => {
  // Each sum is lengths less joints, added by hand from the tally.
  it('0.12 + 1.50 − 0.10, then 3.00 − 0.14 fifteen times, then 1.12 − 0.14 make 45.40 m', () => {
    const [running] = runningOf('laid-out-45m.json');
    expect(running).toEqual([
      0.12, 1.52, 4.38, 7.24, 10.1, 12.96, 15.82, 18.68, 21.54, 24.4, 27.26, 30.12, 32.98, 35.84,
      38.7, 41.56, 44.42, 45.4,
    ]);
  });

  it('0.12 + 1.50 − 0.08, then 3.00 − 0.12 ten times, then 2.23 − 0.12 make 32.45 m', () => {
    const [running] = runningOf('hand-drilled-32m.json');
    expect(running).toEqual([
      0.12, 1.54, 4.42, 7.3, 10.18, 13.06, 15.94, 18.82, 21.7, 24.58, 27.46, 30.34, 32.45,
    ]);
  });

  it('0.12 + 1.00 − 0.08, 2.00 − 0.12, twice 3.00 − 0.12 and 0.84 − 0.12 make 9.40 m', () => {
    const [running] = runningOf('shallow-direct-action-9m.json');
    expect(running).toEqual([0.12, 1.04, 2.92, 5.8, 8.68, 9.4]);
  });

  it('begins anew with each string: 3 × 6.20 m, and 0.10 + 1.95 + 39 × 2.95 + 0.40 m', () => {
    const [outer, inner] = runningOf('telescoped-in-granite.json');
    expect(outer).toEqual([6.2, 12.4, 18.6]);
    expect(inner!.slice(0, 3)).toEqual([0.1, 2.05, 5]);
    expect(inner!.at(-1)).toBe(117.5);
  });
});

describe('the joints', () => {
  it('stand as deep as the foot less the running length, above ground below zero', () => {
    const [string] = stepsOf(well('laid-out-45m.json'));
    const tops = string!.steps.map(({ topM }) => topM);
    // 45.00 − 0.12, 45.00 − 10.10, 45.00 − 45.40.
    expect([tops[0], tops[4], tops.at(-1)]).toEqual([44.88, 34.9, -0.4]);
  });
});

describe('the numbers', () => {
  it('begin at the lowest pipe and go on over the strings', () => {
    const numbers = stepsOf(well('telescoped-in-granite.json')).map(({ steps }) => [
      steps[0]!.number,
      steps[0]!.kind,
      steps.at(-1)!.number,
    ]);
    expect(numbers).toEqual([
      [1, 'plain', 3],
      [4, 'cap', 45],
    ]);
  });

  it('count a cap that adds no length, which goes in first', () => {
    const record: WellRecord = {
      schemaVersion: 1,
      strings: [
        {
          components: [{ kind: 'cap' }, { kind: 'plain', length: 3 }],
          set: { by: 'bottom', depth: 2.5 },
        },
      ],
    };
    const [first, second] = stepsOf(record)[0]!.steps;
    expect(first).toEqual({
      number: 1,
      kind: 'cap',
      cut: false,
      runningM: 0,
      topM: 2.5,
      bottomM: 2.5,
      centralisersM: [],
      path: 'strings[0].components[0]',
    });
    expect(second).toMatchObject({ number: 2, lengthM: 3, runningM: 3, topM: -0.5 });
  });
});

const cutOf = (record: WellRecord) =>
  stepsOf(record).flatMap(({ steps }) =>
    steps.filter(({ cut }) => cut).map(({ number }) => number),
  );

describe('pipes to be cut', () => {
  it('are those shorter than most of their kind, where no pipes on site are written', () => {
    const record = well('laid-out-45m.json');
    expect(cutOf({ ...record, layingOut: {} })).toEqual([18]);
    expect(cutOf(well('shallow-direct-action-9m.json'))).toEqual([6]);
    expect(cutOf(well('telescoped-in-granite.json'))).toEqual([]);
  });

  it('are those that no pipe on site is as long as, the sump among them', () => {
    const record = well('laid-out-45m.json');
    const pipes = [
      { kind: 'plain' as const, length: 3, outside: 125 },
      { kind: 'screen' as const, length: 3, outside: 125 },
    ];
    expect(cutOf({ ...record, layingOut: { pipes } })).toEqual([2, 18]);
    const short = [...pipes, { kind: 'plain' as const, length: 1.5, outside: 125 }];
    expect(cutOf({ ...record, layingOut: { pipes: short } })).toEqual([18]);
  });

  it('are none among steel pipes of which each has its own length', () => {
    const components = [6.05, 5.8, 6.12, 5.94].map((length) => ({
      kind: 'plain' as const,
      length,
    }));
    expect(cutOf({ schemaVersion: 1, strings: [{ components }] })).toEqual([]);
  });
});
