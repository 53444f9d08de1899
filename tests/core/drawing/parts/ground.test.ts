import { describe, expect, it } from 'vitest';
import { drawGround, hatchOf } from '../../../../core/drawing/parts/ground.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, regionsOf, stratum, textsOf, viewOf } from '../sample.ts';

const view = viewOf();

describe('the hatch of a stratum', () => {
  it('is that of its material, with the first second material in it', () => {
    expect(hatchOf(stratum(0, 1, { material: 'sand' }))).toBe('sand');
    const clayey = { material: 'clay' as const };
    expect(hatchOf(stratum(0, 1, { material: 'sand', qualifiers: [clayey] }))).toBe('sand+clay');
  });

  it('leaves out a second material of which there is little', () => {
    const little = { material: 'clay' as const, degree: 'slightly' as const };
    expect(hatchOf(stratum(0, 1, { material: 'sand', qualifiers: [little] }))).toBe('sand');
  });

  it('is none where nobody named the material', () => {
    expect(hatchOf(stratum(0, 1))).toBeUndefined();
  });
});

describe('the log', () => {
  it('has a box from top to foot of each stratum over the whole column', () => {
    const { x, width } = view.columns.ground;
    const [box] = regionsOf(drawGround(kit, [stratum(4, 9, { material: 'silt' })], view));
    expect(pointsOf(box!)).toEqual([
      [x, yAt(view.axis, 4)],
      [x + width, yAt(view.axis, 4)],
      [x + width, yAt(view.axis, 9)],
      [x, yAt(view.axis, 9)],
    ]);
  });

  it('draws a sharp contact full and another dashed', () => {
    const dashOf = (boundary: 'sharp' | 'gradual' | 'uncertain') =>
      pathsOf(drawGround(kit, [stratum(0, 9, { material: 'silt', boundary })], view)).find(
        ({ source }) => source,
      )!.stroke!.dash;
    expect(dashOf('sharp')).toBeUndefined();
    expect(dashOf('gradual')).toBeDefined();
    expect(dashOf('uncertain')).toBeDefined();
  });

  it('puts the signs of uncertain contacts that are near each other side by side', () => {
    const thin = [0, 0.2, 0.4].map((from) =>
      stratum(from, from + 0.2, { material: 'sand', boundary: 'uncertain' }),
    );
    const far = stratum(0.6, 8, { material: 'clay', boundary: 'uncertain' });
    const signs = textsOf(drawGround(kit, [...thin, far], view));
    expect(signs.map(({ text }) => text)).toEqual(['?', '?', '?', '?']);
    const [first, second, third, last] = signs.map(({ x }) => x);
    expect(first! - second!).toBeGreaterThan(1.4);
    expect(second! - third!).toBeGreaterThan(1.4);
    expect(last).toBe(first);
  });

  it('leaves a stratum without a material white, and not empty', () => {
    const blank = pathsOf(drawGround(kit, [stratum(0, 9)], view)).find(({ fill }) => fill);
    expect(blank).toMatchObject({ fill: '#ffffff', source: 'log[0]' });
  });
});
