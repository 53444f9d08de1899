import type { Metres } from '../../base/units.ts';
import type { FlowPoint } from './pumpKind.ts';

/** What a pump gives at a lift, and whether a figure was printed on both sides of it. */
export interface FlowAt {
  readonly flowM3h: number;
  readonly printed: boolean;
  /** The points that it lies between; the nearest where it lies beyond all. */
  readonly points: readonly FlowPoint[];
}

function between(from: FlowPoint, to: FlowPoint, liftM: Metres): number {
  const share = (liftM - from.liftM) / (to.liftM - from.liftM);
  return from.flowM3h + share * (to.flowM3h - from.flowM3h);
}

/**
 * Flow at a lift, m³/h: between two printed lifts on the straight line; above the shallowest no
 * more than there; below the deepest by the same work of the person, so that lift times flow stays.
 * None where nothing is printed.
 */
export function flowAt(points: readonly FlowPoint[], liftM: Metres): FlowAt | undefined {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return undefined;
  if (liftM < first.liftM) return { flowM3h: first.flowM3h, printed: false, points: [first] };
  if (liftM > last.liftM)
    return { flowM3h: (last.flowM3h * last.liftM) / liftM, printed: false, points: [last] };
  const at = points.findIndex((point) => point.liftM >= liftM);
  const [from, to] = [points[at - 1], points[at]];
  if (!from || !to || to.liftM === liftM)
    return { flowM3h: to?.flowM3h ?? first.flowM3h, printed: true, points: [to ?? first] };
  return { flowM3h: between(from, to, liftM), printed: true, points: [from, to] };
}
