import type { Source } from '../practice/practice.ts';
import { sources } from './sources.ts';

interface Assumption {
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
}

/** Figures that no practice sets yet; wherever one is used, it stands among the inputs. */
export const assumptions = {
  /** Cement poured loose into a box; handbooks give 1.4 to 1.5. */
  looseCementKgL: { value: 1.44, unit: 'kg/l', source: sources.concrete },
  /** Building sand, loose and dry. */
  looseSandKgL: { value: 1.6, unit: 'kg/l', source: sources.concrete },
  /** Floor and both sides of a drain, laid flat. */
  drainWidthM: { value: 0.6, unit: 'm', source: sources.common },
  /** Rigid PVC; resin data give 1.35 to 1.46. */
  pvcKgL: { value: 1.4, unit: 'kg/l', source: sources.pvc },
  steelKgL: { value: 7.85, unit: 'kg/l', source: sources.steel },
} as const satisfies Record<string, Assumption>;

export type AssumptionId = keyof typeof assumptions;
