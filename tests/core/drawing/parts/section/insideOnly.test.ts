import { describe, expect, it } from 'vitest';
import { centreOf } from '../../../../../core/drawing/parts/section/across.ts';
import { drawCasing } from '../../../../../core/drawing/parts/section/casing.ts';
import {
  pieceWords,
  stretchesOf,
} from '../../../../../core/drawing/parts/section/casingCallouts.ts';
import { widthScaleOf } from '../../../../../core/drawing/papers/asBuilt/extent.ts';
import type { Component } from '../../../../../core/record/strings.ts';
import { resolve } from '../../../model/well.ts';
import { boundsOf, kit, pathsIn, view } from '../../trial.ts';

const well = (...components: Component[]) =>
  resolve({ strings: [{ components, set: { by: 'bottom', depth: 9 } }] });
const plain = (sizes: Partial<Component>): Component => ({ kind: 'plain', length: 9, ...sizes });
const words = (sizes: Partial<Component>) =>
  pieceWords(kit, well(plain(sizes)).strings[0]!.pieces[0]!).replaceAll('\u00a0', ' ');

describe('a pipe of which only the inside is known', () => {
  it('is drawn by dashed lines at its inner walls, true to scale', () => {
    const drawn = drawCasing(well(plain({ inside: 102 })).strings[0]!, view);
    const walls = pathsIn(drawn).filter(({ stroke }) => stroke?.dash);
    // 102 mm at 1:10 are 10.2 mm across; 9 m at 1:100 are 90 mm down from 20.
    const half = 102 / 10 / 2;
    expect(walls.map(boundsOf)).toEqual([
      [centreOf(view) - half, 20, centreOf(view) - half, 110],
      [centreOf(view) + half, 20, centreOf(view) + half, 110],
    ]);
    expect(pathsIn(drawn).some(({ fill }) => fill)).toBe(false);
  });

  it('is drawn apart from one of which nothing is known', () => {
    const at = (sizes: Partial<Component>) =>
      pathsIn(drawCasing(well(plain(sizes)).strings[0]!, view)).map((one) => boundsOf(one)[0]);
    expect(at({ inside: 102 })).not.toEqual(at({}));
    expect(at({})).toHaveLength(2);
  });

  it('says so beside the section', () => {
    expect(words({ inside: 102 })).toBe('plain casing Ø in 102');
    expect(words({ inside: 102, outside: 110 })).toBe('plain casing 110 × 4');
    expect(words({})).toBe('plain casing');
  });

  it('is another stretch than one of another inside', () => {
    const { strings } = well(plain({ inside: 102 }), plain({ inside: 152 }));
    expect(stretchesOf(strings[0]!)).toHaveLength(2);
  });

  it('counts for the scale of diameters', () => {
    expect(widthScaleOf(well(plain({})), 35)).toBeUndefined();
    // 300 mm at 1:10 are 30 mm, at 1:5 60.
    expect(widthScaleOf(well(plain({ inside: 300 })), 35)).toBe(10);
  });
});
