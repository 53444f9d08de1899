import { describe, expect, it } from 'vitest';
import { pumpKinds } from '../../../../core/water/pump/kinds.ts';
import { rankedKinds } from '../../../../core/water/pump/pumpKind.ts';

function kind(id: string) {
  return pumpKinds.find((one) => one.id === id)!;
}

describe('the table of generic pumps', () => {
  it('holds each kind once, in order', () => {
    expect(pumpKinds.map(({ id }) => id)).toEqual(rankedKinds);
  });

  it.each([
    // WaterAid, technical brief Handpumps, 2013.
    ['suction', 7],
    // Maker’s data on a pump to IS 14106.
    ['directAction', 15],
    // Akvopedia, Rope pump: one person.
    ['ropeAndWasher', 35],
    // Akvopedia, on the IS 15500 family.
    ['deepwellLever', 50],
    ['deepwellOpenTop', 30],
    ['extraDeepLever', 80],
    // Published description of the pump with PVC riser.
    ['deepwellPlastic', 45],
  ])('lifts no more than was printed: %s %d m', (id, mostM) => {
    expect(kind(id).lift!.most.value).toBe(mostM);
    expect(kind(id).lift!.most.source.mark).toBe('read');
  });

  it.each([
    // Published table of rated flow of the IS 15500 pump, l/min.
    ['deepwellLever', 20, 16.7],
    ['deepwellLever', 25, 15],
    // Akvopedia, on the IS 15500 family, m³/h as l/min.
    ['deepwellLever', 10, 30],
    ['deepwellLever', 15, 1.3 / 0.06],
    ['extraDeepLever', 50, 0.55 / 0.06],
    ['extraDeepLever', 60, 0.45 / 0.06],
    // Maker’s data on a pump to IS 14106.
    ['directAction', 5, 3.5 / 0.06],
    ['directAction', 10, 30],
    ['directAction', 15, 20],
    // Practical Action, rope pump.
    ['ropeAndWasher', 35, 10],
  ])('gives what was printed: %s at %d m', (id, liftM, litresAMinute) => {
    const point = kind(id).flow.find((one) => one.liftM === liftM)!;
    expect(point.flowM3h / 0.06).toBeCloseTo(litresAMinute, 6);
    expect(point.source.mark).toBe('read');
  });

  it('has printed lifts from the shallowest, with less flow the deeper, within its limit', () => {
    for (const { flow, lift } of pumpKinds)
      flow.forEach((point, at) => {
        const before = flow[at - 1];
        if (before) expect(point.liftM).toBeGreaterThan(before.liftM);
        if (before) expect(point.flowM3h).toBeLessThan(before.flowM3h);
        expect(point.liftM).toBeLessThanOrEqual(lift!.most.value);
      });
  });

  it('never takes more work than one adult does: 75 W', () => {
    for (const { flow } of pumpKinds)
      for (const { flowM3h, liftM } of flow)
        expect((1000 * 9.81 * flowM3h * liftM) / 3600).toBeLessThan(75);
  });

  it('keeps galvanised pumps out of water below pH 6.5 (Akvopedia, IS 15500 family)', () => {
    const galvanised = pumpKinds.filter(({ leastPh }) => leastPh?.value === 6.5);
    expect(galvanised.map(({ id }) => id)).toEqual([
      'deepwellOpenTop',
      'deepwellLever',
      'extraDeepLever',
    ]);
  });

  it('marks the widths of casing that nobody looked up as from memory', () => {
    expect(kind('ropeAndWasher').casing.least).toMatchObject({
      value: 60,
      source: { mark: 'read' },
    });
    expect(kind('deepwellLever').casing.least).toMatchObject({
      value: 100,
      source: { mark: 'fromMemory' },
    });
  });
});
