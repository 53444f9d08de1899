import { describe, expect, it } from 'vitest';
import type { SampleModel, Stratum } from '../../../../../core/model/wellModel.ts';
import type { GroundSample } from '../../../../../core/record/samples.ts';
import type { View } from '../../../../../core/drawing/parts/columns.ts';
import {
  drawSamples,
  sampleMarks,
  samplesWidths,
} from '../../../../../core/drawing/parts/log/samples.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, viewOf, wordsOf } from '../../sample.ts';

const view = viewOf();

interface Taken {
  readonly strata?: readonly Stratum[];
  readonly samples?: readonly SampleModel[];
}

const draw = ({ strata = [], samples = [] }: Taken, on: View, listed: GroundSample[] = []) =>
  drawSamples(kit, sampleMarks({ strata, samples }, listed), on);

const filled = (drawn: ReturnType<typeof draw>) => pathsOf(drawn).filter(({ fill }) => fill);

describe('samples', () => {
  it('stand at the middle of their interval, on one page', () => {
    const sampled = stratum(0, 20, { sampled: true });
    const upper = viewOf({ toM: 10, last: false });
    const lower = viewOf({ fromM: 10, first: false });
    const [sign] = filled(draw({ strata: [sampled] }, upper));
    const ys = pointsOf(sign!).map(([, y]) => y);
    expect((Math.min(...ys) + Math.max(...ys)) / 2).toBeCloseTo(yAt(upper.axis, 10), 9);
    expect(filled(draw({ strata: [sampled] }, lower))).toEqual([]);
  });

  it('are not drawn where none was taken', () => {
    expect(filled(draw({ strata: [stratum(0, 20)] }, view))).toEqual([]);
  });

  const listed = (...ranges: [number, number][]) =>
    ranges.map(([fromM, toM], at) => ({ fromM, toM, path: `samples[${at}]` }));
  const heightOf = (sign: ReturnType<typeof filled>[number]) => {
    const ys = pointsOf(sign).map(([, y]) => y);
    return {
      middle: (Math.min(...ys) + Math.max(...ys)) / 2,
      high: Math.max(...ys) - Math.min(...ys),
    };
  };

  it('that are listed stand at their own depth, each with its place in the record', () => {
    const signs = filled(draw({ samples: listed([3, 4], [8, 8]) }, view));
    expect(signs.map((sign) => [heightOf(sign).middle, sign.source])).toEqual([
      [expect.closeTo(yAt(view.axis, 3.5), 9), 'samples[0]'],
      [expect.closeTo(yAt(view.axis, 8), 9), 'samples[1]'],
    ]);
  });

  it('that are listed take the place of the sign of the whole interval, and of no other', () => {
    const strata = [stratum(0, 10, { sampled: true }), stratum(10, 20, { sampled: true })];
    const signs = filled(draw({ strata, samples: listed([3, 4]) }, view));
    expect(signs.map((sign) => heightOf(sign).middle)).toEqual([
      expect.closeTo(yAt(view.axis, 3.5), 9),
      expect.closeTo(yAt(view.axis, 15), 9),
    ]);
  });

  it('that follow each other closely are small enough to be told apart', () => {
    const close = viewOf({ toM: 2000 });
    const signs = filled(draw({ samples: listed([10, 11], [11, 12], [12, 13]) }, close));
    const [first, second] = signs.map(heightOf);
    const pitch = second!.middle - first!.middle;
    expect(first!.high).toBeLessThan(Math.max(pitch, 0.61));
    expect(first!.high).toBeLessThan(
      heightOf(filled(draw({ samples: listed([3, 4]) }, view))[0]!).high,
    );
  });

  const bags = [
    { from: 3, to: 4, label: 'KV-25/01' },
    { from: 8, to: 9, label: 'KV-25/02' },
  ];
  const two = listed([3, 4], [8, 9]);

  it('say what tells their bags apart where the column has room for it', () => {
    const marks = sampleMarks({ strata: [], samples: two }, bags);
    expect(marks.map(({ label }) => label)).toEqual(['01', '02']);
    const { wanted } = samplesWidths(kit, marks);
    const { samples } = view.columns;
    const room = { ...view, columns: { ...view.columns, samples: { ...samples, width: wanted } } };
    expect(wordsOf(draw({ samples: two }, room, bags))).toEqual(['01', '02']);
    expect(wordsOf(draw({ samples: two }, view, bags))).toEqual([]);
  });

  it('that are too near for all labels say those that have room', () => {
    const near = listed([3, 4], [3, 4.2], [8, 9]);
    const room = { ...view, columns: { ...view.columns, samples: { x: 36, width: 9 } } };
    const labels = ['A', 'B', 'C'].map((label) => ({ from: 0, to: 1, label }));
    expect(wordsOf(draw({ samples: near }, room, labels))).toEqual(['A', 'C']);
  });
});
