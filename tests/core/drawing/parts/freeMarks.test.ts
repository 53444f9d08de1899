import { describe, expect, it } from 'vitest';
import { freeMarks } from '../../../../core/drawing/parts/freeMarks.ts';
import { drawMarkBoxes, marksHeight } from '../../../../core/drawing/parts/markBoxes.ts';
import { group } from '../../../../core/drawing/shapes.ts';
import { kit } from '../sample.ts';

const page = (marks: Parameters<typeof drawMarkBoxes>[1]) => ({
  width: 210,
  height: 297,
  items: [
    group('panel', [
      drawMarkBoxes(kit, marks, {}, { x: 20, y: 230, width: 180, height: marksHeight }),
    ]),
  ],
});

describe('the boxes that nobody has signed', () => {
  it('are found where they were drawn, wherever they stand on the page', () => {
    const free = freeMarks(page([]));
    expect(free.map(({ role }) => role)).toEqual([
      'supervisor',
      'contractor',
      'client',
      'committee',
    ]);
    const { x, y, width, height } = free[1]!.box;
    expect([x, width]).toEqual([65.6, 45 - 1.2]);
    // The heading stands on 2.7 mm; letters such as p reach some 0.4 mm below.
    expect(y).toBeGreaterThan(230 + 2.7 + 0.4);
    expect(y).toBeLessThan(230 + 5);
    expect(y + height).toBeCloseTo(230 + marksHeight - 0.6, 9);
  });

  it('are not those with a mark', () => {
    const free = freeMarks(page([{ role: 'client', name: 'Yamélia Ɓossarin' }]));
    expect(free.map(({ role }) => role)).toEqual(['supervisor', 'contractor', 'committee']);
  });

  it('are none on a page without', () => {
    expect(freeMarks({ width: 210, height: 297, items: [] })).toEqual([]);
  });
});
