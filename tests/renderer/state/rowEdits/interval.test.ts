import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { LogInterval } from '../../../../core/record/log.ts';
import type { Desk } from '../../../../renderer/state/desk.ts';
import {
  joinIntervals,
  middleOf,
  splitInterval,
  splitsAt,
} from '../../../../renderer/state/rowEdits/interval.ts';

const deskOf = (log: readonly LogInterval[], typed: Desk['typed'] = {}): Desk =>
  deepFreeze({ record: { schemaVersion: 1, log: [...log] }, typed });
const two = deskOf([
  { from: 0, to: 2.25, material: 'topsoil', colour: 'brown' },
  { from: 2.25, to: 5.5, material: 'clay', remarks: 'stiff' },
]);
const material = (row: unknown) => (row as LogInterval).material ?? '';

describe('splitting an interval', () => {
  it('makes two of it that meet, alike in all else', () => {
    expect(splitInterval(two, 'log', 1, 4).record.log?.slice(1)).toEqual([
      { from: 2.25, to: 4, material: 'clay', remarks: 'stiff' },
      { from: 4, to: 5.5, material: 'clay', remarks: 'stiff' },
    ]);
  });

  it('is done in the middle, to the centimetre', () => {
    // (0 + 2.25) / 2 = 1.125: a half goes up.
    expect(middleOf(two, 'log', 0)).toBe(1.13);
    expect(middleOf(two, 'log', 2)).toBeUndefined();
  });

  it('is done at a typed depth to the centimetre', () => {
    expect(splitInterval(two, 'log', 0, 1.2345).record.log?.[0]?.to).toBe(1.23);
  });

  it.each([0, -1, 2.25, 7, 0.001, 2.2499])('is not done at %d, where nothing is left', (depth) => {
    expect(splitsAt(two, 'log', 0, depth)).toBe(false);
    expect(splitInterval(two, 'log', 0, depth)).toBe(two);
  });

  it('leaves a text that cannot be read where it is, and a foot with the lower part', () => {
    const odd = deskOf(two.record.log ?? [], {
      'log[0].to': '2x',
      'log[0].material': 'zzz',
      'log[1].colour': 'x',
    });
    expect(splitInterval(odd, 'log', 0, 1).typed).toEqual({
      'log[0].material': 'zzz',
      'log[1].to': '2x',
      'log[2].colour': 'x',
    });
  });
});

describe('joining an interval with the next', () => {
  it('keeps the top of the first and the foot of the second', () => {
    const [joined, ...more] = joinIntervals(two, 'log', 0).record.log ?? [];
    expect(joined).toMatchObject({ from: 0, to: 5.5, material: 'topsoil', colour: 'brown' });
    expect(more).toEqual([]);
  });

  it('puts what the second said otherwise into the remarks', () => {
    expect(joinIntervals(two, 'log', 0, material).record.log?.[0]?.remarks).toBe('clay; stiff');
  });

  it('takes from the second what the first does not say', () => {
    const desk = deskOf([
      { from: 0, to: 1, material: 'sand' },
      { from: 1, to: 2, material: 'sand', moisture: 'wet' },
    ]);
    expect(joinIntervals(desk, 'log', 0, material).record.log).toEqual([
      { from: 0, to: 2, material: 'sand', moisture: 'wet' },
    ]);
  });

  it('changes nothing at the last one', () => {
    expect(joinIntervals(two, 'log', 1)).toBe(two);
  });

  it('carries along the texts of the rows below, and the foot that cannot be read', () => {
    const odd = deskOf([...(two.record.log ?? []), { from: 6, to: 7 }], {
      'log[1].to': '5x',
      'log[2].colour': 'x',
    });
    expect(joinIntervals(odd, 'log', 0).typed).toEqual({ 'log[0].to': '5x', 'log[1].colour': 'x' });
  });

  it('gives back what was split, wherever that was', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 324 }), (centimetres) => {
        const depth = 2.25 + centimetres / 100;
        const split = splitInterval(two, 'log', 1, depth);
        expect(split.record.log).toHaveLength(3);
        expect(joinIntervals(split, 'log', 1, material)).toEqual(two);
      }),
      { seed: 5 },
    );
  });
});
