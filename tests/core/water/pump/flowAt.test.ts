import { describe, expect, it } from 'vitest';
import { flowAt } from '../../../../core/water/pump/flowAt.ts';
import { pumpKinds } from '../../../../core/water/pump/kinds.ts';

const lever = pumpKinds.find(({ id }) => id === 'deepwellLever')!.flow;

describe('flow at a lift', () => {
  it('is the printed one at a printed lift', () => {
    expect(flowAt(lever, 10)).toMatchObject({ flowM3h: 1.8, printed: true });
    expect(flowAt(lever, 25)!.flowM3h).toBeCloseTo(0.9, 9);
  });

  it('lies on the straight line between two printed lifts', () => {
    // Half way between 1.8 and 1.3 m³/h: computed.
    expect(flowAt(lever, 12.5)).toMatchObject({ flowM3h: 1.55, printed: true });
  });

  it('is no more above the shallowest printed lift than there', () => {
    expect(flowAt(lever, 3)).toMatchObject({ flowM3h: 1.8, printed: false });
  });

  it('falls below the deepest printed lift as the work of one person allows', () => {
    expect(flowAt(lever, 50)).toMatchObject({ printed: false });
    expect(flowAt(lever, 50)!.flowM3h).toBeCloseTo(0.45, 9);
    // The extra-deep pump of the family gives 0.55 m³/h there (Akvopedia): the reckoned one is less.
    expect(flowAt(lever, 50)!.flowM3h).toBeLessThan(0.55);
  });

  it('is not known where nothing is printed', () => {
    expect(flowAt([], 10)).toBeUndefined();
  });

  it('never rises with the lift', () => {
    for (const { flow, lift } of pumpKinds.filter((kind) => kind.flow.length > 0))
      for (let liftM = 0.5; liftM <= lift!.most.value; liftM += 0.5)
        expect(flowAt(flow, liftM)!.flowM3h).toBeLessThanOrEqual(
          flowAt(flow, liftM - 0.5)!.flowM3h + 1e-9,
        );
  });
});
