import { describe, expect, it } from 'vitest';
import {
  careCalendar,
  carePeriods,
  carePlan,
} from '../../../../../core/drawing/papers/committee/care.ts';

// Duties of a caretaker by day, month and year: common practice of rural water supply.
describe('the care of a well', () => {
  const tasks = (kind: Parameters<typeof carePlan>[0]) => {
    const calendar = careCalendar(carePlan(kind));
    return carePeriods.flatMap((period): readonly string[] => calendar[period]);
  };

  it('has the pad swept, the drain cleared, the level read and the water tested everywhere', () => {
    for (const kind of [
      'ropeAndWasher',
      'solarSubmersible',
      'bucketAndWindlass',
      undefined,
    ] as const)
      expect(tasks(kind)).toEqual(expect.arrayContaining(['sweep', 'drain', 'level', 'sample']));
  });

  it('is fitted to the kind of pump', () => {
    expect(tasks('ropeAndWasher')).toEqual(
      expect.arrayContaining(['ropeLook', 'ropeNew', 'cover']),
    );
    expect(tasks('directAction')).toContain('seals');
    expect(tasks('directAction')).not.toContain('grease');
    expect(tasks('deepwellLever')).toEqual(expect.arrayContaining(['grease', 'lift']));
    expect(tasks('extraDeepLever')).toEqual(tasks('deepwellLever'));
    expect(tasks('solarSubmersible')).toContain('panels');
    expect(tasks('electricSubmersible')).toEqual(expect.arrayContaining(['meter', 'electrician']));
    expect(tasks('bucketAndWindlass')).toEqual(expect.arrayContaining(['bucketClean', 'cover']));
  });

  it('asks nothing of a pump whose kind is not known but that it is checked', () => {
    expect(carePlan(undefined)).toBe('other');
    expect(tasks(undefined)).not.toContain('grease');
    expect(tasks(undefined)).toContain('mechanic');
  });
});
