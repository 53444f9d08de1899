import { describe, expect, it } from 'vitest';
import {
  plainStretches,
  saving,
  spareDepths,
} from '../../../../../core/drawing/papers/asBuilt/plainStretches.ts';
import { breakHeight } from '../../../../../core/drawing/scale.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { longPlain } from '../../../../sheets/examples/longPlain.ts';

const whole = { fromM: -0.5, toM: 64 };
const plainOf = (more: Partial<WellRecord>) =>
  plainStretches(resolveWell({ ...longPlain(), ...more }), whole);

describe('plain stretches', () => {
  it('lie between all that is to be seen of a well', () => {
    expect(plainOf({})).toContainEqual({ fromM: 14.2, toM: 40 });
  });

  it('end where a strike, a sample, a layer or a fill is', () => {
    const strike = plainOf({ strikes: [{ depth: 25 }] });
    expect(strike).toContainEqual({ fromM: 25, toM: 40 });
    const sample = plainOf({ samples: [{ from: 20, to: 22 }] });
    expect(sample).toContainEqual({ fromM: 14.2, toM: 21 });
    const fill = plainOf({ annulus: [{ from: 0, to: 30, fill: 'backfill' }] });
    expect(fill).toContainEqual({ fromM: 14.2, toM: 30 });
  });

  it('hold no screen, and nothing above ground', () => {
    for (const { fromM, toM } of plainOf({})) {
      expect(fromM >= 59.5 || toM <= 47.5).toBe(true);
      expect(fromM).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('depths that can be spared', () => {
  it('are whole metres that leave some of the stretch at both ends', () => {
    expect(spareDepths([{ fromM: 14.2, toM: 40 }], 200)).toEqual([{ fromM: 16, toM: 38 }]);
    expect(saving({ fromM: 16, toM: 38 }, 200)).toBe(110 - breakHeight);
  });

  it('are none where a break would save little', () => {
    expect(spareDepths([{ fromM: 10, toM: 18 }], 200)).toEqual([]);
    expect(spareDepths([{ fromM: 14.2, toM: 40 }], 1000)).toEqual([]);
  });
});
