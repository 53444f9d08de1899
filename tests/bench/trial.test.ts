import { expect, it } from 'vitest';
import { writeReport } from './report.ts';
import { median, runTrial, type Trial } from './trial.ts';

const trial: Trial = {
  title: 'Two ways',
  says: 'Which is slower.',
  rivals: [
    { name: 'short', run: () => (now += 2) },
    { name: 'long', run: () => (now += calls++ === 0 ? 1000 : 6) },
  ],
};
let now = 0;
let calls = 0;

it('rivals are set against the first, without the round that warms up', () => {
  expect(runTrial(trial, 3, () => now)).toEqual([
    { name: 'short', medianMs: 2, ratio: 1 },
    { name: 'long', medianMs: 6, ratio: 3 },
  ]);
});

it('the median of an even number lies between the middle two', () => {
  expect(median([9, 1, 2, 4])).toBe(3);
  expect(median([9, 1, 2])).toBe(2);
});

it('the report names machine and day and keeps no more digits than the times deserve', () => {
  const timings = [
    { name: 'short', medianMs: 2.3456, ratio: 1 },
    { name: 'long', medianMs: 234.56, ratio: 100.4 },
  ];
  const text = writeReport([[trial, timings]], ['## Apart'], {
    machine: 'a laptop',
    date: '2026-01-15',
    rounds: 3,
  });
  expect(text).toContain('on 2026-01-15, on a laptop');
  expect(text).toContain('## Apart');
  expect(text).toContain('| short | 1 | 2.3 |\n| long | 100 | 235 |');
});
