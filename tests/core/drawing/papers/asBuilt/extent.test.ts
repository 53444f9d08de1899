import { describe, expect, it } from 'vitest';
import { extentOf, widthScaleOf } from '../../../../../core/drawing/papers/asBuilt/extent.ts';
import { resolve } from '../../../model/well.ts';

const hole = (diameter: number, to = 30) => ({
  sections: [{ from: 0, to, diameter }],
  depthReached: to,
});
const pipe = (outside: number, length: number) => [
  {
    components: [{ kind: 'plain' as const, outside, wall: 4, length }],
    set: { by: 'stickUp' as const, height: 0.5 },
  },
];

describe('the depths that a sheet shows', () => {
  it('go from what stands highest to what reaches deepest', () => {
    const model = resolve({ bore: hole(160), strings: pipe(110, 20) });
    expect(extentOf(model)).toEqual({ fromM: -0.5, toM: 30 });
  });

  it('begin above ground where water stands there', () => {
    const levels = [{ reading: -2.4, datum: 'ground' as const }];
    expect(extentOf(resolve({ bore: hole(160), levels })).fromM).toBe(-2.4);
  });

  it('reach to the log’s foot where that is all that is known', () => {
    expect(extentOf(resolve({ log: [{ from: 0, to: 12.4 }] }))).toEqual({ fromM: 0, toM: 12.4 });
  });

  it('are one metre where nothing is known', () => {
    expect(extentOf(resolve({}))).toEqual({ fromM: 0, toM: 1 });
  });
});

describe('the scale of diameters', () => {
  const scale = (chapters: Parameters<typeof resolve>[0]) => widthScaleOf(resolve(chapters), 35);

  it('is the largest that shows the widest part whole', () => {
    expect(scale({ bore: hole(165) })).toBe(5);
    expect(scale({ bore: hole(311) })).toBe(10);
    expect(scale({ strings: pipe(60, 5) })).toBe(2);
  });

  it('is that of the rest where a dug part is very much wider', () => {
    const dug = {
      sections: [
        { from: 0, to: 2, diameter: 1300 },
        { from: 2, to: 9, diameter: 160 },
      ],
    };
    expect(scale({ bore: dug })).toBe(5);
  });

  it('is that of a dug well which has nothing narrower', () => {
    expect(scale({ bore: hole(1300, 9) })).toBe(50);
  });

  it('is none where no diameter is known', () => {
    expect(scale({ bore: { depthReached: 30 } })).toBeUndefined();
  });
});
