import { describe, expect, it } from 'vitest';
import { chosenWindows } from '../../../core/hydraulics/chosenWindows.ts';
import type { WellRecord } from '../../../core/record/schema.ts';

type Window = NonNullable<WellRecord['tests']>[number]['window'];
const of = (...windows: readonly Window[]) =>
  chosenWindows({
    schemaVersion: 1,
    tests: windows.map((window) => ({ kind: 'constantRate', ...(window ? { window } : {}) })),
  });

describe('the straight parts that a person chose', () => {
  it('go by the index of their test, and leave out tests without one', () => {
    expect(of(undefined, { from: 10, to: 60 }, {})).toEqual({ 1: { fromMin: 10, toMin: 60 } });
    expect(chosenWindows({ schemaVersion: 1 })).toEqual({});
  });

  it('lie open where an end is not written', () => {
    expect(of({ from: 10 }, { to: 60 })).toEqual({
      0: { fromMin: 10, toMin: Infinity },
      1: { fromMin: 0, toMin: 60 },
    });
  });

  it('are turned round where the end was written before the start', () => {
    expect(of({ from: 60, to: 10 })).toEqual({ 0: { fromMin: 10, toMin: 60 } });
  });
});
