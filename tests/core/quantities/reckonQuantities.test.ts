import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { groupIds, quantityKinds, type QuantityId } from '../../../core/quantities/quantity.ts';
import { reckonQuantities } from '../../../core/quantities/reckonQuantities.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { garbageWell } from '../../laws/garbageWell.ts';
import { randomWell } from '../../laws/randomWell.ts';
import { evaluate } from './evaluate.ts';
import { all, practiceWith, those } from './reckoned.ts';

const runs = { numRuns: 150, seed: 20261125 };

function reckonWell(record: WellRecord) {
  return reckonQuantities(record, resolveWell(record), practiceWith());
}

const drilled = fc
  .tuple(randomWell, fc.constantFrom('mudRotary', 'airRotary', 'sludging', undefined))
  .map(([record, method]): WellRecord => ({
    ...record,
    bore: { ...record.bore, ...(method && { method }) },
  }));

const anyWell = fc.oneof(drilled, garbageWell, fc.constantFrom(...fileNames.map(well)));

/** A whole and the zones or sizes that it sums. */
const sums: readonly (readonly [QuantityId, QuantityId])[] = [
  ['annulusLitres', 'annulusZoneLitres'],
  ['gravelLitres', 'gravelZoneLitres'],
  ['gravelKg', 'gravelZoneKg'],
  ['clayLitres', 'clayZoneLitres'],
  ['clayKg', 'clayZoneKg'],
  ['groutLitres', 'groutZoneLitres'],
  ['groutCementKg', 'groutZoneCementKg'],
  ['groutWaterLitres', 'groutZoneWaterLitres'],
  ['pipesCount', 'pipeCount'],
  ['pipesM', 'pipeM'],
  ['pipesKg', 'pipeKg'],
];

describe('quantities of any well', () => {
  it('are amounts in the group and unit of their kind, whatever the record holds', () => {
    fc.assert(
      fc.property(anyWell, (record) => {
        const { groups } = reckonWell(record);
        expect(groups.map(({ id }) => id)).toEqual(groupIds);
        for (const { id: group, quantities } of groups)
          for (const { id, value, unit } of quantities) {
            expect(quantityKinds[id]).toEqual({ group, unit });
            expect(Number.isFinite(value) && value >= 0).toBe(true);
          }
      }),
      runs,
    );
  });

  it('come out of their own formulas and inputs', () => {
    fc.assert(
      fc.property(fc.oneof(drilled, fc.constantFrom(...fileNames.map(well))), (record) => {
        for (const quantity of all(reckonWell(record))) {
          const worked = evaluate(quantity);
          const near = Math.abs(worked - quantity.value) <= 1e-6 * Math.max(1, quantity.value);
          expect(near, `${quantity.id}: ${quantity.formula} gives ${worked}`).toBe(true);
        }
      }),
      runs,
    );
  });

  it('have inputs that are quantities of the same well where they say so', () => {
    fc.assert(
      fc.property(drilled, (record) => {
        const quantities = all(reckonWell(record));
        for (const { inputs } of quantities)
          for (const { from, value } of inputs)
            if (typeof from === 'object' && 'quantity' in from)
              expect(
                quantities.some((one) => one.id === from.quantity && one.value === value),
              ).toBe(true);
      }),
      runs,
    );
  });

  it('sum up to their wholes', () => {
    fc.assert(
      fc.property(drilled, (record) => {
        const reckoned = reckonWell(record);
        for (const [whole, part] of sums) {
          const [one] = those(reckoned, whole);
          const parts = those(reckoned, part).map(({ value }) => value);
          const sum = parts.reduce((before, value) => before + value, 0);
          if (one) expect(one.value).toBeCloseTo(sum, 6);
        }
      }),
      runs,
    );
  });

  it('have a whole, or say why there is none', () => {
    fc.assert(
      fc.property(fc.oneof(drilled, garbageWell), (record) => {
        const reckoned = reckonWell(record);
        for (const [whole, part] of sums)
          if (those(reckoned, part).length > 0 && those(reckoned, whole).length === 0) {
            const { group } = quantityKinds[whole];
            expect(reckoned.groups.find(({ id }) => id === group)!.missing).not.toEqual([]);
          }
      }),
      runs,
    );
  });

  it('have never fewer sacks or trips than needed, and never one too many', () => {
    fc.assert(
      fc.property(drilled, (record) => {
        for (const { inputs, value, formula } of all(reckonWell(record))) {
          if (!formula.startsWith('n ≥')) continue;
          const [need, each] = inputs.map((input) => input.value) as [number, number];
          expect(value * each).toBeGreaterThanOrEqual(need - 1e-6);
          expect((value - 1) * each).toBeLessThan(need);
        }
      }),
      runs,
    );
  });
});

describe('quantities of the demo wells', () => {
  it.each(['laid-out-45m.json', 'hand-drilled-32m.json'])('of %s lack nothing', (name) => {
    expect(reckonWell(well(name)).groups.flatMap(({ missing }) => missing)).toEqual([]);
  });

  it('are alike each time', () => {
    const record = well('two-screens-58m.json');
    expect(reckonWell(record)).toEqual(reckonWell(record));
  });
});

describe('an empty record', () => {
  it('has no quantities but those of the practice’s pad and drain, and says what is missing', () => {
    const { groups } = reckonWell({ schemaVersion: 1 });
    const told = groups.filter(({ quantities }) => quantities.length > 0).map(({ id }) => id);
    expect(told).toEqual(['concrete']);
    const silent = groups.filter(({ missing }) => missing.length === 0).map(({ id }) => id);
    expect(silent).toEqual(['concrete']);
  });
});
