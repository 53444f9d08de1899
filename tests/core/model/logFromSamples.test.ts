import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logFromSamples } from '../../../core/model/logFromSamples.ts';
import type { GroundSample } from '../../../core/record/samples.ts';

describe('the log that samples make', () => {
  it('has one interval for each run of alike neighbours', () => {
    expect(
      logFromSamples([
        { from: 0, to: 1, material: 'topsoil' },
        { from: 1, to: 2, material: 'clay' },
        { from: 2, to: 3, material: 'clay' },
        { from: 3, to: 4, material: 'sand' },
        { from: 4, to: 5, material: 'clay' },
      ]),
    ).toEqual([
      { from: 0, to: 1, material: 'topsoil', sampled: true },
      { from: 1, to: 3, material: 'clay', sampled: true },
      { from: 3, to: 4, material: 'sand', sampled: true },
      { from: 4, to: 5, material: 'clay', sampled: true },
    ]);
  });

  it('tells grounds apart by second material, grain and colour too', () => {
    const sand = { material: 'sand' } as const;
    const seconds = [{ material: 'clay' as const }];
    expect(
      logFromSamples([
        { from: 0, to: 1, ...sand },
        { from: 1, to: 2, ...sand, qualifiers: seconds },
        { from: 2, to: 3, ...sand, qualifiers: seconds, grain: 'fine' },
        { from: 3, to: 4, ...sand, qualifiers: seconds, grain: 'fine', colour: 'Grey' },
        { from: 4, to: 5, ...sand, qualifiers: seconds, grain: 'fine', colour: 'grey ' },
      ]).map(({ from, to }) => [from, to]),
    ).toEqual([
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 5],
    ]);
  });

  it('keeps what the bags say and what was remarked, once each', () => {
    const [interval] = logFromSamples([
      { from: 0, to: 1, material: 'sand', label: 'B1', remark: 'wet' },
      { from: 1, to: 2, material: 'sand', label: 'B2', remark: 'wet' },
      { from: 2, to: 3, material: 'sand', remark: 'shells' },
    ]);
    expect(interval).toMatchObject({ sampleLabel: 'B1, B2', remarks: 'wet; shells' });
  });

  it('leaves a gap where nothing was seen', () => {
    const log = logFromSamples([
      { from: 0, to: 1, material: 'sand' },
      { from: 2, to: 3, material: 'sand' },
    ]);
    expect(log.map(({ from, to }) => [from, to])).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });

  it('invents no material for a sample that has none', () => {
    expect(logFromSamples([{ from: 0, to: 1 }])).toEqual([{ from: 0, to: 1, sampled: true }]);
  });

  it('takes samples in order of depth, turns one round and leaves out one of a single depth', () => {
    expect(
      logFromSamples([
        { from: 3, to: 2, material: 'clay' },
        { from: 0, to: 2, material: 'clay' },
        { from: 7, to: 7, material: 'sand' },
      ]),
    ).toEqual([{ from: 0, to: 3, material: 'clay', sampled: true }]);
  });

  it('covers what the samples cover and no more, wherever they meet', () => {
    const material = fc.constantFrom<GroundSample['material']>('clay', 'sand', undefined);
    fc.assert(
      fc.property(fc.array(material, { minLength: 1, maxLength: 40 }), (found) => {
        const samples = found.map((one, at) => ({
          from: at / 10,
          to: (at + 1) / 10,
          ...(one ? { material: one } : {}),
        }));
        const log = logFromSamples(samples);
        expect(log[0]?.from).toBe(0);
        expect(log.at(-1)?.to).toBe(found.length / 10);
        log.slice(1).forEach((interval, at) => {
          expect(interval.from).toBe(log[at]?.to);
          expect(interval.material).not.toBe(log[at]?.material);
        });
      }),
      { seed: 11 },
    );
  });
});
