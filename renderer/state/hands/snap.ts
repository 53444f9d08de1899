import type { DepthM, Metres } from '../../../core/base/units.ts';
import { roundDepth } from '../../../core/model/range.ts';
import type { Handle } from './handle.ts';

/** Metres that a drag or an arrow key goes by: as fine as a tape is read, and coarser. */
export const steps = { fine: 0.01, tenth: 0.1, half: 0.5, metre: 1 } as const;

type Keys = Pick<MouseEvent, 'shiftKey' | 'ctrlKey' | 'metaKey'>;

/** The step of a drag by the keys that are held with it. */
export function stepOf({ shiftKey, ctrlKey, metaKey }: Keys): Metres {
  if (ctrlKey || metaKey) return steps.half;
  return shiftKey ? steps.tenth : steps.fine;
}

/** The nearest depth at which what is written is a whole count of steps, within the limits. */
export function snapped(handle: Handle, depthM: DepthM, stepM: Metres): DepthM {
  const { leastM, mostM, roundFromM } = handle;
  const count = Math.round((depthM - roundFromM) / stepM);
  const roundM = roundDepth(roundFromM + count * stepM);
  return Math.min(Math.max(roundM, leastM), mostM);
}

/** A step up (-1) or down (+1) from where the edge stands. */
export function nudged(handle: Handle, by: -1 | 1, stepM: Metres): DepthM {
  return snapped(handle, handle.depthM + by * stepM, steps.fine);
}
