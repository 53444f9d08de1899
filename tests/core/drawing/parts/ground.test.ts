import { describe, expect, it } from 'vitest';
import type { GroupItem } from '../../../../core/drawing/items.ts';
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

  it('draws contacts over the boxes of all strata, so that no hatch hides one', () => {
    const two = [stratum(0, 4, { material: 'silt' }), stratum(4, 9, { material: 'clay' })];
    const { items } = drawGround(kit, two, view) as GroupItem;
    const names = items.map((item) => (item as GroupItem).name);
    expect(names.slice(0, 4)).toEqual(['stratum', 'stratum', 'contact', 'contact']);
  });

  it('draws no contact where a page ends within a stratum', () => {
    const beyond = stratum(0, view.axis.toM + 5, { material: 'clay', boundary: 'gradual' });
    const { items } = drawGround(kit, [beyond], view) as GroupItem;
    expect(items.filter((item) => (item as GroupItem).name === 'contact')).toEqual([]);
  });

  it('leaves a stratum without a material white, and not empty', () => {
    const blank = pathsOf(drawGround(kit, [stratum(0, 9)], view)).find(({ fill }) => fill);
    expect(blank).toMatchObject({ fill: '#ffffff', source: 'log[0]' });
  });
});
