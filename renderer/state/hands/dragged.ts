import type { DepthM } from '../../../core/base/units.ts';
import { withTyped, type Desk } from '../desk.ts';
import { setAt } from '../edit.ts';
import type { Handle, Write } from './handle.ts';

/**
 * What is written when an edge is moved alone: of two parts that meet, the one that gets shorter,
 * so that a gap opens and never an overlap; else only the edge itself.
 */
function alone({ depthM, writes }: Handle, toM: DepthM): readonly Write[] {
  const shrinking = writes.filter(({ role }) => role === (toM < depthM ? 'above' : 'below'));
  if (shrinking.length > 0) return shrinking;
  return writes.filter(({ role }) => role !== 'joined');
}

/**
 * The desk after an edge was dragged to a depth: the same changes as typing the figures into
 * their fields. `apart` moves one part alone where others would go along.
 */
export function dragged(desk: Desk, handle: Handle, toM: DepthM, apart = false): Desk {
  if (toM === handle.depthM) return desk;
  const writes = apart ? alone(handle, toM) : handle.writes;
  return writes.reduce<Desk>((next, { path, typedAs, value }) => {
    const clean = withTyped(next, typedAs, undefined);
    return { ...clean, record: setAt(clean.record, path, value(toM)) };
  }, desk);
}
