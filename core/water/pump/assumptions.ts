import type { Source } from '../../practice/practice.ts';
import { pumpSources as from } from './sources.ts';

interface Assumption {
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
}

/**
 * What is taken where nobody gave another figure; wherever one is used, it stands among the inputs
 * of a quantity. Those that an input of the same name replaces come first.
 */
export const pumpAssumptions = {
  /** Printed for villages: 20 to 25; 15 at least in an emergency (Sphere). */
  litresPerPersonDay: { value: 20, unit: 'l/d', source: from.directAction },
  hoursMost: { value: 8, unit: 'h/d', source: from.sphereTable },
  outletM: { value: 0.6, unit: 'm', source: from.common },
  deliveryInsideMm: { value: 34, unit: 'mm', source: from.common },
  deliveryM: { value: 0, unit: 'm', source: from.common },
  /** Share of the day’s water that is fetched in the busiest hours. */
  peakShare: { value: 0.4, unit: '1', source: from.common },
  peakHours: { value: 2, unit: 'h', source: from.common },
  queueMost: { value: 30, unit: 'min', source: from.sphere },
  containerLitres: { value: 20, unit: 'l', source: from.sphere },
  /** Lift that a suction pump loses for each metre above the sea. */
  suctionLossPerM: { value: 0.001, unit: 'm/m', source: from.trade },
  /** Part of a figure from memory by which it may be missed before it rules out. */
  casingDoubtShare: { value: 0.05, unit: '1', source: from.common },
  /** Friction of bends, valves and couplings, as a share of that of the straight pipe. */
  fittingsShare: { value: 0.1, unit: '1', source: from.common },
  /** Smooth plastic pipe; that of new galvanised pipe is 0.15 mm. */
  roughnessMm: { value: 0.01, unit: 'mm', source: from.moody },
  viscosityM2s: { value: 1.004e-6, unit: 'm²/s', source: from.water },
  /** Of pump and motor together; a worked example for a small submersible has 0.34. */
  pumpEfficiency: { value: 0.34, unit: '1', source: from.solarBook },
  /** Heat, dust, wires and panels unlike each other. */
  panelDerating: { value: 0.8, unit: '1', source: from.solarBook },
  /** What a submersible reaches under its intake: its motor. */
  motorM: { value: 0.8, unit: 'm', source: from.common },
  pipeM: { value: 3, unit: 'm', source: from.trade },
  washerSpacingM: { value: 1, unit: 'm', source: from.trade },
  /** Wheel, guide and knot of a rope; drum of a windlass; slack of a cable to its box. */
  ropeOverM: { value: 2, unit: 'm', source: from.common },
  cableOverM: { value: 5, unit: 'm', source: from.common },
} as const satisfies Record<string, Assumption>;

export type PumpAssumptionId = keyof typeof pumpAssumptions;
