import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../../core/base/recordPath.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { fileNames, well } from '../../../demo-data/wells.ts';
import { randomWell, singleStringWell } from '../../../laws/randomWell.ts';
import type { Desk } from '../../../../renderer/state/desk.ts';
import { dragged } from '../../../../renderer/state/hands/dragged.ts';
import { findHandle, type Handle } from '../../../../renderer/state/hands/handle.ts';
import { handlesOf } from '../../../../renderer/state/hands/handlesOf.ts';
import { snapped, steps } from '../../../../renderer/state/hands/snap.ts';
import { typedInto } from './typing.ts';

const open = (record: WellRecord): Desk => ({ record: deepFreeze(record), typed: {} });
const handles = (record: WellRecord) => handlesOf(record, resolveWell(record));
const movable = (record: WellRecord) => handles(record).filter(({ writes }) => writes.length > 0);

/** A depth within a handle's limits and near it, other than its own. */
function elsewhere(handle: Handle, share: number): number {
  const most = Math.min(handle.mostM, handle.depthM + 20);
  const least = Math.max(handle.leastM, handle.depthM - 20);
  return snapped(handle, least + share * (most - least), steps.fine);
}

const wells: [string, WellRecord][] = fileNames.map((name) => [name, well(name)]);

describe.each(wells)('edges of %s', (_, record) => {
  const desk = open(record);

  it('are told apart by their ids', () => {
    const ids = handles(record).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(5);
  });

  it('write what typing the same figures into their fields writes', () => {
    for (const handle of movable(record)) {
      const toM = elsewhere(handle, 0.3);
      const typed = handle.writes.reduce(
        (next, { typedAs, value }) => typedInto(next, typedAs, value(toM)),
        desk,
      );
      expect(dragged(desk, handle, toM)).toEqual(typed);
    }
  });

  it('stand where they were dragged to when the record is resolved anew', () => {
    for (const handle of movable(record)) {
      const toM = elsewhere(handle, 0.6);
      const next = dragged(desk, handle, toM).record;
      const held = handle.edge.kind === 'level' ? handle.id : undefined;
      const paths = handle.writes.map(({ path }) => path);
      const after = findHandle(handlesOf(next, resolveWell(next), held), handle.id, paths);
      expect({ id: handle.id, depthM: after?.depthM }).toEqual({ id: handle.id, depthM: toM });
    }
  });

  it('come back to the same record when they are dragged back', () => {
    for (const handle of movable(record)) {
      const toM = elsewhere(handle, 0.4);
      const moved = dragged(desk, handle, toM);
      const back = dragged(moved, { ...handle, depthM: toM }, handle.depthM);
      const settled = handle.writes.every(({ path }) => valueAt(record, path) !== undefined);
      if (settled) expect(back.record).toEqual(record);
    }
  });

  it('write nothing when they stay', () => {
    for (const handle of movable(record)) expect(dragged(desk, handle, handle.depthM)).toBe(desk);
  });
});

describe('edges of random wells', () => {
  it('write round centimetres', () => {
    fc.assert(
      fc.property(randomWell, fc.double({ min: 0, max: 1, noNaN: true }), (record, share) => {
        for (const handle of movable(record)) {
          const toM = elsewhere(handle, share);
          if (toM === handle.leastM || toM === handle.mostM) continue;
          const [first] = handle.writes;
          const value = first!.value(toM);
          const figures = typeof value === 'object' ? Object.values(value as object) : [value];
          for (const figure of figures.filter((one) => typeof one === 'number'))
            expect(Math.abs(figure * 100 - Math.round(figure * 100))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('never make two layers or fills overlap, nor one of no thickness', () => {
    fc.assert(
      fc.property(singleStringWell, fc.double({ min: 0, max: 1, noNaN: true }), (record, share) => {
        const told = (one: WellRecord) =>
          resolveWell(one).findings.filter(({ code }) =>
            ['log.overlap', 'log.empty', 'annulus.overlap', 'annulus.empty'].includes(code),
          ).length;
        const before = told(record);
        for (const handle of movable(record).filter(({ edge }) => edge.kind === 'face')) {
          const next = dragged(open(record), handle, elsewhere(handle, share)).record;
          expect(told(next)).toBe(before);
        }
      }),
      { numRuns: 30 },
    );
  });
});
