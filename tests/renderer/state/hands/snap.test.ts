import { describe, expect, it } from 'vitest';
import type { Handle } from '../../../../renderer/state/hands/handle.ts';
import { nudged, snapped, stepOf } from '../../../../renderer/state/hands/snap.ts';

const handle: Handle = {
  id: 'h',
  edge: { kind: 'intake' },
  lane: 'inside',
  depthM: 12.34,
  leastM: 10,
  mostM: 15,
  roundFromM: 0,
  row: 'pump.intake',
  writes: [],
};
const none = { shiftKey: false, ctrlKey: false, metaKey: false };

describe('snapping', () => {
  it('is to the centimetre, to 0.1 m with Shift, to 0.5 m with Ctrl or Command', () => {
    expect(stepOf(none)).toBe(0.01);
    expect(stepOf({ ...none, shiftKey: true })).toBe(0.1);
    expect(stepOf({ ...none, ctrlKey: true })).toBe(0.5);
    expect(stepOf({ ...none, metaKey: true, shiftKey: true })).toBe(0.5);
  });

  it('gives whole steps without the dust of binary fractions', () => {
    expect(snapped(handle, 12.3449, 0.01)).toBe(12.34);
    expect(snapped(handle, 12.3451, 0.01)).toBe(12.35);
    expect(snapped(handle, 12.3449, 0.1)).toBe(12.3);
    expect(snapped(handle, 12.3449, 0.5)).toBe(12.5);
  });

  it('keeps within the limits', () => {
    expect(snapped(handle, 3, 0.01)).toBe(10);
    expect(snapped(handle, 33, 0.5)).toBe(15);
  });

  it('counts from the datum, so that the reading is round', () => {
    const read = { ...handle, roundFromM: -0.455 };
    const depthM = snapped(read, 12.3449, 0.01);
    expect(depthM + 0.455).toBeCloseTo(12.8, 9);
  });

  it('is by the step of the key where an edge is nudged', () => {
    expect(nudged(handle, 1, 0.01)).toBe(12.35);
    expect(nudged(handle, -1, 0.1)).toBe(12.24);
    expect(nudged(handle, 1, 1)).toBe(13.34);
    expect(nudged({ ...handle, depthM: 14.5 }, 1, 1)).toBe(15);
  });
});
