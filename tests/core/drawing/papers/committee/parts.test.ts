import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../../core/drawing/papers/committee/facts.ts';
import { partsToKeep } from '../../../../../core/drawing/papers/committee/parts.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { kitIn } from './kit.ts';

function kept(pump: WellRecord['pump'], rest: Partial<WellRecord> = {}): string[] {
  const record: WellRecord = { schemaVersion: 1, ...rest, ...(pump && { pump }) };
  const facts = factsOf(record, resolveWell(record));
  return partsToKeep(kitIn(), record, facts).map(({ says }) => says);
}

describe('the parts to keep', () => {
  it('have the length from the intake to the outlet, in whole metres, and what is written of them', () => {
    // 21.5 m under the ground and 0.6 m over it are 22.1 m, so 23 m hold them.
    const pump = {
      kind: 'deepwellLever' as const,
      intake: 21.5,
      riserDiameter: 63,
      riserMaterial: 'uPVC',
      rods: 'steel',
    };
    expect(kept(pump)).toEqual([
      'Rising pipe: about 23 m, 63 mm across, uPVC',
      'Pump rods: about 23 m, steel',
      'Seals of piston and valve, bearings, bolts',
    ]);
  });

  it('of a rope pump are a rope there and back', () => {
    // Twice 10.6 m and 2 m for wheel, guide and knot.
    expect(kept({ kind: 'ropeAndWasher', intake: 10 })).toContain('Rope: about 24 m');
  });

  it('of a bucket are a rope to the foot of the well', () => {
    const bore = { depthReached: 12 };
    expect(kept({ kind: 'bucketAndWindlass' }, { bore })).toContain(
      'Rope of the bucket: about 15 m',
    );
  });

  it('have no length where nobody wrote how deep the pump hangs', () => {
    expect(kept({ kind: 'deepwellLever' })).toEqual(['Seals of piston and valve, bearings, bolts']);
    expect(kept(undefined)).toEqual(['Wearing parts that the maker names']);
  });
});
