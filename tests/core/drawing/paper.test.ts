import { describe, expect, it } from 'vitest';
import { orientations, paperNames, paperOf } from '../../../core/drawing/paper.ts';

const all = paperNames.flatMap((name) => orientations.map((one) => paperOf(name, one)));

describe('papers', () => {
  // Source: ISO 216.
  it('have the sizes of their names', () => {
    expect(paperOf('A4', 'portrait')).toMatchObject({ width: 210, height: 297 });
    expect(paperOf('A4', 'landscape')).toMatchObject({ width: 297, height: 210 });
    expect(paperOf('A3', 'portrait')).toMatchObject({ width: 297, height: 420 });
    expect(paperOf('A3', 'landscape')).toMatchObject({ width: 420, height: 297 });
  });

  // Source: ISO 5457 (from memory).
  it('lie as is usual where nobody chose: A4 upright, A3 on its long side', () => {
    expect(paperOf('A4')).toBe(paperOf('A4', 'portrait'));
    expect(paperOf('A3')).toBe(paperOf('A3', 'landscape'));
  });

  // Source: ISO 5457 (from memory): 20 mm on the filing side, 10 mm on the others.
  it.each(all)('$name $orientation has a frame with a margin for filing', (paper) => {
    const { x, y, width, height } = paper.frame;
    expect(x).toBe(20);
    expect([y, paper.width - x - width, paper.height - y - height]).toEqual([10, 10, 10]);
  });
});
