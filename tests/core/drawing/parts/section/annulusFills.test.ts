import { describe, expect, it } from 'vitest';
import { drawAnnulusFills } from '../../../../../core/drawing/parts/section/annulusFills.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { pointsOf, regionsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf();

function boxOf(points: readonly (readonly [number, number])[]) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

const close = (values: readonly number[]) => values.map((one) => expect.closeTo(one, 9) as number);

describe('the fills of the annulus', () => {
  it('stand where the model has their rings, on both sides', () => {
    const boxes = regionsOf(drawAnnulusFills(built.annulus, view)).map((one) =>
      boxOf(pointsOf(one)),
    );
    const meant = built.annulus.flatMap(({ rings }) =>
      rings.flatMap(({ fromM, toM, innerMm, outerMm }) => {
        const [left, right] = edgesOf(view, outerMm);
        const [innerLeft, innerRight] = edgesOf(view, innerMm);
        const [top, foot] = [yAt(view.axis, fromM), yAt(view.axis, toM)];
        return [
          [left, top, innerLeft, foot],
          [innerRight, top, right, foot],
        ];
      }),
    );
    expect(meant.length).toBeGreaterThanOrEqual(6);
    expect(boxes).toEqual(meant.map(close));
  });

  it('carry the hatch of their kind and the way to the record', () => {
    const shown = regionsOf(drawAnnulusFills(built.annulus, view)).map(
      ({ hatch, source }) => `${source} ${hatch}`,
    );
    expect(new Set(shown)).toEqual(
      new Set(['annulus[0] fill-cementGrout', 'annulus[1] fill-gravelPack']),
    );
  });

  it('show on a page what of them lies on it', () => {
    const lower = viewOf({ fromM: 10, toM: 20, first: false });
    const boxes = regionsOf(drawAnnulusFills(built.annulus, lower)).map((one) =>
      boxOf(pointsOf(one)),
    );
    expect(Math.min(...boxes.map(([, top]) => top!))).toBe(yAt(lower.axis, 10));
    expect(Math.max(...boxes.map((box) => box[3]!))).toBe(yAt(lower.axis, 20));
  });
});
