import { describe, expect, it } from 'vitest';
import { drawGrain, grainSteps } from '../../../../../core/drawing/parts/log/grain.ts';
import { coarseness, grainLetters } from '../../../../../core/drawing/parts/log/grainClasses.ts';
import type { Material } from '../../../../../core/record/materials.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, viewOf } from '../../sample.ts';

const view = viewOf({ columns: ['grain', 'description'] });
const of = (material: Material) => coarseness({ from: 0, to: 1, material })!;

describe('the profile of grain sizes', () => {
  // Source: ISO 14688-1 (from memory): letters and order of the classes.
  it('has the classes of the standard in the order of their size', () => {
    expect(grainLetters).toEqual(['Cl', 'Si', 'Sa', 'Gr', 'Co', 'Bo']);
    const soils = ['clay', 'silt', 'sand', 'gravel', 'cobbles', 'boulders'] as const;
    const sizes = soils.map(of);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(sizes.map(Math.floor)).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('tells fine from coarse within silt, sand and gravel, and not within clay', () => {
    const sand = { from: 0, to: 1, material: 'sand' } as const;
    const sizes = (['fine', 'fineToMedium', 'medium', 'mediumToCoarse', 'coarse'] as const).map(
      (grain) => coarseness({ ...sand, grain })!,
    );
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(coarseness({ ...sand, material: 'clay', grain: 'coarse' })).toBe(of('clay'));
  });

  it('says nothing of ground whose name does not tell its grain', () => {
    expect(grainSteps([stratum(0, 4, { material: 'granite' }), stratum(4, 5)])).toEqual([]);
  });

  it('has a step from top to foot of each stratum, the wider the coarser', () => {
    const strata = [stratum(0, 5, { material: 'clay' }), stratum(5, 9, { material: 'gravel' })];
    const boxes = pathsOf(drawGrain(kit, grainSteps(strata), view)).filter(({ fill }) => fill);
    const [clay, gravel] = boxes.map(pointsOf);
    expect([clay![0]![1], clay![2]![1]]).toEqual([yAt(view.axis, 0), yAt(view.axis, 5)]);
    expect(gravel![2]![0]).toBeGreaterThan(clay![2]![0]);
    expect(boxes.map(({ source }) => source)).toEqual(['log[0].grain', 'log[5].grain']);
  });
});
