import { describe, expect, it } from 'vitest';
import { intervalsOf } from '../../../core/model/strata.ts';
import { resolve, said } from './well.ts';

const ranges = (model: ReturnType<typeof resolve>) =>
  model.strata.map(({ fromM, toM, interval }) => [fromM, toM, interval.material]);

describe('the log', () => {
  it('keeps the upper of two overlapping intervals to its foot', () => {
    const model = resolve({
      log: [
        { from: 0, to: 5, material: 'clay' },
        { from: 4.5, to: 9, material: 'sand' },
      ],
    });
    expect(ranges(model)).toEqual([
      [0, 5, 'clay'],
      [5, 9, 'sand'],
    ]);
    expect(said(model, 'log.overlap')).toMatchObject([{ path: 'log[1]', fromM: 4.5, toM: 5 }]);
  });

  it('keeps a lens that lies wholly within an interval', () => {
    const model = resolve({
      log: [
        { from: 0, to: 10, material: 'sand' },
        { from: 3, to: 4, material: 'clay' },
      ],
    });
    expect(ranges(model)).toEqual([
      [0, 3, 'sand'],
      [3, 4, 'clay'],
      [4, 10, 'sand'],
    ]);
  });

  it('keeps all rows of one range as one stratum, the first written first, with a note', () => {
    const model = resolve({
      log: [
        { from: 0, to: 3, material: 'topsoil' },
        { from: 3, to: 4.5, material: 'clay', words: 'Clay interlayered' },
        { from: 3, to: 4.5, material: 'gravel', sampled: true },
        { from: 3, to: 4.5, material: 'sand' },
        { from: 4.5, to: 9, material: 'shale' },
      ],
    });
    expect(ranges(model)).toEqual([
      [0, 3, 'topsoil'],
      [3, 4.5, 'clay'],
      [4.5, 9, 'shale'],
    ]);
    expect(model.strata[1]).toMatchObject({
      path: 'log[1]',
      others: [
        { path: 'log[2]', interval: { material: 'gravel', sampled: true } },
        { path: 'log[3]', interval: { material: 'sand' } },
      ],
    });
    expect(intervalsOf(model.strata[1]!).map(({ material }) => material)).toEqual([
      'clay',
      'gravel',
      'sand',
    ]);
    expect(said(model, 'log.overlap')).toEqual([]);
    expect(said(model, 'log.sameRange')).toMatchObject([
      { severity: 'note', path: 'log[2]', fromM: 3, toM: 4.5, values: { count: 3 } },
    ]);
  });

  it('knows one range also where its depths differ by less than a micron', () => {
    const model = resolve({
      log: [
        { from: 0.1 + 0.2, to: 2, material: 'clay' },
        { from: 0.3, to: 2, material: 'sand' },
      ],
    });
    expect(model.strata.map(({ others }) => others.length)).toEqual([1]);
  });

  it('still says the overlap of rows of one range with a third, once', () => {
    const model = resolve({
      log: [
        { from: 0, to: 5, material: 'clay' },
        { from: 0, to: 5, material: 'sand' },
        { from: 4, to: 9, material: 'gravel' },
      ],
    });
    expect(said(model, 'log.overlap')).toMatchObject([{ path: 'log[2]', fromM: 4, toM: 5 }]);
    expect(model.strata.map(({ others }) => others.length)).toEqual([1, 0]);
  });

  it('says its gaps, at ground, between intervals and at the foot of the hole', () => {
    const model = resolve({
      bore: { depthReached: 20 },
      log: [
        { from: 8, to: 15 },
        { from: 1, to: 7.5 },
      ],
    });
    expect(said(model, 'log.gap').map(({ fromM, toM }) => [fromM, toM])).toEqual([
      [0, 1],
      [7.5, 8],
    ]);
    expect(said(model, 'log.short')).toMatchObject([{ fromM: 15, toM: 20 }]);
  });

  it('has nothing to say of intervals that follow one another to the foot of the hole', () => {
    const model = resolve({
      bore: { sections: [{ from: 0, to: 20, diameter: 150 }] },
      log: [
        { from: 0, to: 8 },
        { from: 8, to: 20 },
      ],
    });
    expect(model.findings).toEqual([]);
  });

  it('is above ground only where it starts above ground', () => {
    expect(said(resolve({ log: [{ from: 0.5, to: 7 }] }), 'log.aboveGround')).toEqual([]);
    expect(said(resolve({ log: [{ from: -0.5, to: 7 }] }), 'log.aboveGround')).toMatchObject([
      { fromM: -0.5, toM: 0 },
    ]);
  });

  it('turns an interval that was written upside down', () => {
    const model = resolve({ log: [{ from: 7, to: 0, material: 'silt' }] });
    expect(ranges(model)).toEqual([[0, 7, 'silt']]);
    expect(said(model, 'log.reversed')).toMatchObject([{ severity: 'error', path: 'log[0]' }]);
  });
});
