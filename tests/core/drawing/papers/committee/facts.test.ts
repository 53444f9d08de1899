import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../../core/drawing/papers/committee/facts.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { well } from '../../../../demo-data/wells.ts';

const facts = (record: WellRecord) => factsOf(record, resolveWell(record));

describe('the facts of a well', () => {
  it('are the foot of its pipes, its last rest level, its pump and the pipe around that', () => {
    const found = facts(well('hand-drilled-32m.json'));
    expect(found.depth).toMatchObject({ m: 32, of: 'well' });
    expect(found.intakeM).toBe(21.5);
    expect(found.kind).toBe('deepwellLever');
    expect(found.pipe).toMatchObject({ outsideMm: 110 });
    expect(found.rest?.at).toContain('2025-12-04');
  });

  it('of a hole that was given up are its own depth, and no pipe', () => {
    const found = facts(well('collapsed-hole-38m.json'));
    expect(found.depth).toMatchObject({ m: 38, of: 'hole' });
    expect(found.pipe).toBeUndefined();
  });

  it('are none where nobody wrote any', () => {
    expect(facts({ schemaVersion: 1 })).toEqual({});
  });
});
