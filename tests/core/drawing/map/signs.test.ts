import { describe, expect, it } from 'vitest';
import { wellSigns } from '../../../../core/drawing/map/signs.ts';
import { wellStates } from '../../../../core/record/identity.ts';

describe('the signs of wells', () => {
  it('are there for every state and for none', () => {
    expect(Object.keys(wellSigns).sort()).toEqual([...wellStates, ''].sort());
  });

  it('differ in shape or filling, not in colour', () => {
    const looks = Object.values(wellSigns).map(({ outline, filled }) => `${outline} ${filled}`);
    expect(new Set(looks).size).toBe(looks.length);
  });

  it('stay within their box', () => {
    for (const { outline } of Object.values(wellSigns))
      for (const [figure] of outline.matchAll(/-?\d+(\.\d+)?/g))
        expect(Math.abs(Number(figure))).toBeLessThanOrEqual(1);
  });
});
