import { describe, expect, it } from 'vitest';
import { found, generalFigure, judge, met, missed, sentences } from './judge.ts';

const hole = { bore: { depthReached: 6 } };
const sample = (from: number, to: number) => ({ from, to });
const interval = (from: number, to: number, sampled?: boolean) => ({
  from,
  to,
  material: 'sand' as const,
  ...(sampled === undefined ? {} : { sampled }),
});

describe('samples.sparse', () => {
  it('asks for a sample from each metre', () => {
    // "each metre and at each change, laid out, bagged, labelled": from memory, RWSN Field Note 2012-2.
    expect(generalFigure('sampleEachM')).toBe(1);
  });

  it('is met by a sample for each metre, ranges or single depths, the last one short', () => {
    const ranges = [0, 1, 2, 3, 4].map((from) => sample(from, from + 1));
    expect(judge('samples.sparse', { ...hole, samples: [...ranges, sample(5, 5.6)] })).toEqual(met);
    const ends = [1, 2, 3, 4, 5, 6].map((at) => sample(at, at));
    expect(judge('samples.sparse', { ...hole, samples: ends })).toEqual(met);
    const tops = [0, 1, 2, 3, 4, 5].map((at) => sample(at, at));
    expect(judge('samples.sparse', { ...hole, samples: tops })).toEqual(met);
  });

  it('says the metres that have none, with the first stretch', () => {
    const chapters = { ...hole, samples: [0, 1, 4].map((from) => sample(from, from + 1)) };
    expect(found('samples.sparse', chapters)).toEqual(['warning samples']);
    expect(sentences('samples.sparse', chapters)).toEqual([
      '3.00 m of the hole have no sample, the first of them from 2.00 m to 4.00 m; one is asked for each 1.00 m.',
    ]);
  });

  it('does not take one bag for several metres', () => {
    const chapters = { ...hole, samples: [sample(0, 3), sample(3, 6)] };
    expect(judge('samples.sparse', chapters).findings).toHaveLength(1);
  });

  it('takes intervals of the log that are marked as sampled, and leads to the first that is not', () => {
    const sampled = [interval(0, 2, true), interval(2, 6, true)];
    expect(judge('samples.sparse', { ...hole, log: sampled })).toEqual(met);
    const part = [interval(0, 2, true), interval(2, 4, false), interval(4, 6, true)];
    expect(found('samples.sparse', { ...hole, log: part })).toEqual(['warning log[1]']);
  });

  it('cannot judge without any sample, nor without the depth of the hole', () => {
    expect(missed('samples.sparse', { ...hole, log: [interval(0, 6)] })).toEqual([
      'samples samples',
    ]);
    expect(missed('samples.sparse', { samples: [sample(0, 1)] })).toEqual([
      'boreDepth bore.depthReached',
    ]);
  });
});
