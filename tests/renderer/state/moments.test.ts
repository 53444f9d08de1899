import { describe, expect, it } from 'vitest';
import { offsetHere, shownMoment, shownTime } from '../../../renderer/state/moments.ts';

const dateOf = (minutesWest: number) =>
  ({ getTimezoneOffset: () => minutesWest }) as unknown as Date;

describe('moments as they are shown', () => {
  it('stand on this computer’s clock, to the minute', () => {
    const local = new Date(2025, 2, 9, 7, 5, 30);
    expect(shownMoment(local.toISOString())).toBe('2025-03-09 07:05');
    expect(shownTime(local.toISOString())).toBe('07:05');
  });

  it('are left as they are where they are none', () => {
    expect(shownMoment('soon')).toBe('soon');
  });

  it('name an offset east with plus, west with minus, with its minutes', () => {
    expect(offsetHere(dateOf(-345))).toBe('+05:45');
    expect(offsetHere(dateOf(210))).toBe('-03:30');
    expect(offsetHere(dateOf(0))).toBe('+00:00');
  });
});
