import { describe, expect, it } from 'vitest';
import { english } from '../../../../../core/drawing/parts/details/words/en.ts';
import { planMarks } from '../../../../../core/drawing/parts/sitePlan/marks.ts';
import { sitePlanDetail } from '../../../../../core/drawing/parts/sitePlan/sitePlan.ts';
import { signReach, surroundingSign } from '../../../../../core/drawing/parts/sitePlan/signs.ts';
import { group } from '../../../../../core/drawing/shapes.ts';
import { sitingPlan } from '../../../../../core/water/siting/sitingPlan.ts';
import { boundsOf, kit, pathsIn, within, wordsIn } from '../../trial.ts';

const surroundings = [
  { kind: 'latrine', distance: 40, direction: 90, slope: 'downhill' },
  { kind: 'graveyard', distance: 240, direction: 180 },
  { kind: 'building', distance: 12 },
] as const;
const plan = sitingPlan({ surroundings: [...surroundings] });

/** Middle of the sign of the surrounding with a number, right and down of the well. */
function markOf(number: number): [number, number] {
  const drawn = group('all', sitePlanDetail(kit, plan, 176)!.draw(0, 0));
  const mark = within(drawn).find(
    (one) => one.kind === 'group' && one.source === `site.surroundings[${number - 1}]`,
  )!;
  const white = pathsIn(mark).find(({ segments }) => segments.length === 5)!;
  const [left, top, right, bottom] = boundsOf(white);
  return [(left + right) / 2 - 57, (top + bottom) / 2 - 57];
}

const surroundingKinds = Object.keys(english.kinds) as (keyof typeof english.kinds)[];

const everyKind = surroundingKinds.map((kind, at) => ({
  kind,
  distance: 20 + 5 * at,
  direction: 30 * at,
}));

describe('the signs of surroundings', () => {
  it('are each of their own, and stay within their square', () => {
    const signs = surroundingKinds.map((kind) => surroundingSign(kind, [0, 0]));
    const drawn = signs.map((items) => JSON.stringify(items));
    expect(new Set(drawn).size).toBe(surroundingKinds.length);
    for (const path of signs.flat())
      for (const edge of boundsOf(path)) expect(Math.abs(edge)).toBeLessThanOrEqual(signReach);
  });

  it('stand on the plan and, with number and words, in the list beside it', () => {
    const all = sitingPlan({ surroundings: everyKind });
    const drawn = within(group('all', sitePlanDetail(kit, all, 176)!.draw(0, 0)));
    for (const at of surroundingKinds.keys()) {
      const own = drawn.filter((one) => one.source === `site.surroundings[${at}]`);
      const groups = own.flatMap((one) => (one.kind === 'group' ? [one.name] : []));
      expect(groups).toEqual(expect.arrayContaining(['surrounding', 'sign', 'label']));
    }
  });

  it('are counted in the list where it has no room for all', () => {
    const many = Array.from({ length: 60 }, (_, at) => ({ ...everyKind[0]!, direction: 6 * at }));
    const detail = sitePlanDetail(kit, sitingPlan({ surroundings: many }), 176)!;
    const words = wordsIn(group('all', detail.draw(0, 0)));
    const listed = words.filter((one) => one.startsWith('latrine,')).length;
    expect(words.join(' ')).toContain(`${60 - listed} ${kit.words.moreFindings}`);
  });
});

describe('the site sketch plan', () => {
  it('is true to its scale, north up: 40 m east at 1:2000 is 20 mm to the right', () => {
    expect(sitePlanDetail(kit, plan, 176)!.bar.scale).toBe(2000);
    const [right, down] = markOf(1);
    expect(right).toBeCloseTo(20, 6);
    expect(down).toBeCloseTo(0, 6);
  });

  it('has at its edge what stands farther than it reaches', () => {
    const [right, down] = markOf(2);
    expect(right).toBeCloseTo(0, 6);
    expect(down).toBeCloseTo(52, 6);
  });

  it('lists everything, also what cannot be placed, and says so', () => {
    const words = wordsIn(group('all', sitePlanDetail(kit, plan, 176)!.draw(0, 0)));
    expect(words).toContain('latrine, 40 m, 90°, downhill');
    expect(words).toContain('building, 12 m');
    expect(words.join(' ')).toContain('not on the plan: distance or direction not known');
    expect(words).toContain('N');
  });

  it('has an arrow to the north and stays within its height', () => {
    const detail = sitePlanDetail(kit, plan, 176)!;
    const all = group('all', detail.draw(0, 0));
    expect(JSON.stringify(all)).toContain('northArrow');
    for (const one of pathsIn(all).filter(({ segments }) =>
      segments.every(([kind]) => kind !== 'C'),
    ))
      expect(boundsOf(one)[3]).toBeLessThanOrEqual(detail.height + 1e-6);
  });

  it('kept low leaves out empty ground to north and south, and no mark', () => {
    const eastward = sitingPlan({
      surroundings: [
        { kind: 'latrine', distance: 40, direction: 90 },
        { kind: 'building', distance: 90, direction: 260 },
      ],
    });
    const [usual, low] = [false, true].map((one) => sitePlanDetail(kit, eastward, 176, one)!);
    expect(low!.height).toBeLessThan(usual!.height / 2);
    expect(low!.bar).toEqual(usual!.bar);
    const drawn = group('all', low!.draw(0, 0));
    const words = wordsIn(drawn);
    for (const ring of ['50 m', '100 m']) expect(words).toContain(ring);
    for (const one of within(drawn)) {
      if (one.kind !== 'text') continue;
      expect(one.y).toBeGreaterThan(1.8);
      expect(one.y).toBeLessThan(low!.height);
    }
  });

  it('kept low is as high as what stands north and south of the well, or as its list', () => {
    const far = [0, 180].map((direction) => ({ kind: 'well', distance: 90, direction }) as const);
    const upright = sitingPlan({ surroundings: far });
    expect(sitePlanDetail(kit, upright, 176, true)!.height).toBeGreaterThan(100);
    const many = Array.from({ length: 12 }, () => ({ ...everyKind[0]!, direction: 90 }));
    const listed = wordsIn(
      group('all', sitePlanDetail(kit, sitingPlan({ surroundings: many }), 176, true)!.draw(0, 0)),
    );
    expect(listed.filter((one) => one.startsWith('latrine,'))).toHaveLength(12);
  });

  it('is absent where nothing can be placed', () => {
    expect(
      sitePlanDetail(kit, sitingPlan({ surroundings: [{ kind: 'well' }] }), 176),
    ).toBeUndefined();
    expect(sitePlanDetail(kit, sitingPlan(undefined), 176)).toBeUndefined();
  });
});

it('marks of a plan are placed alike in any unit, those beyond a little past the edge', () => {
  const onPaper = planMarks(plan.placed, 100, 50, 2);
  const onScreen = planMarks(plan.placed, 100, 130, 8);
  expect(onPaper[0]!.x / 50).toBeCloseTo(onScreen[0]!.x / 130, 9);
  expect(onPaper.map(({ beyond }) => beyond)).toEqual([false, true]);
  expect(onScreen[1]!.y).toBeCloseTo(138, 9);
});
