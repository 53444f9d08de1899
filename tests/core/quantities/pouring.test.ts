import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { pourSteps } from '../../../core/quantities/pouring.ts';
import type { AnnulusFill, Pour } from '../../../core/record/annulus.ts';
import { record } from '../model/well.ts';

/** A hole of 165 mm with pipe of 110 mm to 20 m, and a pack planned from 8 m down. */
function well(pours: readonly Pour[], fill: Partial<AnnulusFill> = {}, below: AnnulusFill[] = []) {
  return record({
    bore: { depthReached: 20, sections: [{ from: 0, to: 20, diameter: 165 }] },
    strings: [
      {
        set: { by: 'bottom', depth: 20 },
        components: [{ kind: 'plain', count: 7, length: 3, outside: 110, wall: 4.2 }],
      },
    ],
    annulus: [{ from: 8, to: 20, fill: 'gravelPack', ...fill, pours: [...pours] }, ...below],
  });
}

function steps(...args: Parameters<typeof well>) {
  const one = well(...args);
  return pourSteps(0, one, resolveWell(one), practiceOf(one));
}

/**
 * Litres of a metre: the project's reference table of annulus volumes gives 0.14255 m³ over 12 m
 * between 165 and 110 mm; computed there from V = π/4 (D² − d²) L.
 */
const litresOf12m = 142.55;

describe('pouring a pack step by step', () => {
  it('expects the fill where the volume poured so far reaches', () => {
    const [half, whole] = steps([{ litres: litresOf12m / 2 }, { litres: litresOf12m / 2 }]);
    expect(half!.expectedM).toBeCloseTo(14, 2);
    expect(whole!.expectedM).toBeCloseTo(8, 2);
    expect(whole!.totalLitres).toBeCloseTo(litresOf12m, 6);
  });

  it('takes sacks by their mass, and by the practice’s where none is written', () => {
    // 1.6 kg a litre loose (handbooks, from memory): 50 kg are 31.25 L.
    expect(steps([{ sacks: 2 }])[0]!.totalLitres).toBeCloseTo(62.5, 6);
    expect(steps([{ sacks: 2 }], { sackMass: 40 })[0]!.totalLitres).toBeCloseTo(50, 6);
  });

  it.each([
    ['asExpected', 14.1],
    ['high', 12],
    ['low', 17],
  ] as const)('says %s of a sounding at %s m after half the volume', (says, sounded) => {
    const [step] = steps([{ litres: litresOf12m / 2, sounded }]);
    expect(step!.says).toBe(says);
    expect(step!.differenceM).toBeCloseTo(sounded - 14, 2);
  });

  it('takes the usual surplus for what a rough hole swallows', () => {
    // Overrun of 10 to 25 % is usual (handbooks, from memory): 6 m poured may stand 4.8 m high.
    const sounded = 20 - 6 / 1.25;
    expect(steps([{ litres: litresOf12m / 2, sounded }])[0]!.says).toBe('asExpected');
    const lower = sounded + 0.11;
    expect(steps([{ litres: litresOf12m / 2, sounded: lower }])[0]!.says).toBe('low');
  });

  it('starts on what was sounded of the fill below', () => {
    const collapse: AnnulusFill = {
      from: 20,
      to: 20,
      fill: 'naturalCollapse',
      pours: [{ sounded: 19 }],
    };
    const [step] = steps([{ litres: litresOf12m / 12 }], {}, [collapse]);
    expect(step!.expectedM).toBeCloseTo(18, 2);
  });

  it('says nothing of what it cannot know', () => {
    const [first, second] = steps([{ sounded: 18 }, { litres: 10, sounded: 17 }]);
    expect(first).toEqual({ path: 'annulus[0].pours[0]', soundedM: 18 });
    expect(second!.says).toBeUndefined();
    const open = steps([{ sacks: 1 }], { fill: 'backfill' });
    expect(open[0]).toEqual({ path: 'annulus[0].pours[0]' });
    expect(pourSteps(7, well([]), resolveWell(well([])), practiceOf(well([])))).toEqual([]);
  });
});
