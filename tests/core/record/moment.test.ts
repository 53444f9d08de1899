import { describe, expect, it } from 'vitest';
import { dayOf, isDay, minutesBetween } from '../../../core/record/moment.ts';

describe('a moment', () => {
  it('is a day alone where nobody wrote the time', () => {
    expect(isDay('2026-03-14')).toBe(true);
    expect(isDay('2026-03-14T09:40Z')).toBe(false);
    expect(dayOf('2026-03-14T09:40+01:00')).toBe('2026-03-14');
  });

  it('is so many minutes from another, across offsets, to the minute or second', () => {
    expect(minutesBetween('2026-03-14T09:40+01:00', '2026-03-14T10:10:30Z')).toBe(90.5);
  });

  it('is at no time from another that is a day alone', () => {
    expect(minutesBetween('2026-03-14', '2026-03-14T09:40Z')).toBeUndefined();
    expect(minutesBetween('2026-03-14T09:40Z', '2026-03-15')).toBeUndefined();
    expect(minutesBetween('2026-03-14', '2026-03-15')).toBeUndefined();
  });
});
