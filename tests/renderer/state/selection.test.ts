import { describe, expect, it } from 'vitest';
import { liesIn } from '../../../renderer/state/selection.ts';

describe('a path within another', () => {
  it('lies in itself, in its row, and in the whole record', () => {
    expect(liesIn('log[3]', 'log[3]')).toBe(true);
    expect(liesIn('log[3].to', 'log[3]')).toBe(true);
    expect(liesIn('log[3].to', '')).toBe(true);
  });

  it('does not lie in a row whose number only begins alike', () => {
    expect(liesIn('log[31].to', 'log[3]')).toBe(false);
    expect(liesIn('logbook', 'log')).toBe(false);
  });

  it('lies in nothing when there is none', () => {
    expect(liesIn(undefined, '')).toBe(false);
  });
});
