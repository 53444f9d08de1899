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
    expect(free[1]!.box).toEqual({ x: 65, y: 230, width: 45, height: marksHeight });
  });

  it('are not those with a mark', () => {
    const free = freeMarks(page([{ role: 'client', name: 'Yamélia Ɓossarin' }]));
    expect(free.map(({ role }) => role)).toEqual(['supervisor', 'contractor', 'committee']);
  });

  it('are none on a page without', () => {
    expect(freeMarks({ width: 210, height: 297, items: [] })).toEqual([]);
  });
});
