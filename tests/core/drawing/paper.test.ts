import { describe, expect, it } from 'vitest';
import { papers } from '../../../core/drawing/paper.ts';

describe('papers', () => {
  // Source: ISO 216.
  it('have the sizes of their names, A4 upright and A3 lying', () => {
    expect(papers.A4).toMatchObject({ width: 210, height: 297 });
    expect(papers.A3).toMatchObject({ width: 420, height: 297 });
  });

  // Source: ISO 5457 (from memory): 20 mm on the filing side, 10 mm on the others.
  it.each(Object.values(papers))('$name has a frame with a margin for filing', (paper) => {
    const { x, y, width, height } = paper.frame;
    expect(x).toBe(20);
    expect([y, paper.width - x - width, paper.height - y - height]).toEqual([10, 10, 10]);
  });
});
