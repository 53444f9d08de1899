import { describe, expect, it } from 'vitest';
import { drawColumns } from '../../../../core/drawing/parts/columnHeads.ts';
import { headHeight, wordsRoom } from '../../../../core/drawing/parts/columns.ts';
import { switchedColumns } from '../../../../core/drawing/parts/columnNames.ts';
import { axisBottom } from '../../../../core/drawing/scale.ts';
import { frenchKit, kit, textsOf, viewOf, wordsOf } from '../sample.ts';

const rates = [{ fromM: 0, toM: 5, rate: 12, source: 'log[0].minutesPerMetre' }];

describe('the heads of columns', () => {
  it('have their titles over the body', () => {
    const view = viewOf();
    for (const { y } of textsOf(drawColumns(kit, rates, view))) {
      expect(y).toBeGreaterThan(view.body.y - headHeight);
      expect(y).toBeLessThan(view.body.y);
    }
  });

  it('are no wider than their columns, turned where a word is longer', () => {
    const view = viewOf({ columns: switchedColumns });
    for (const one of [kit, frenchKit])
      for (const { width, turn } of textsOf(drawColumns(one, rates, view))) {
        const most = turn === undefined ? 60 : headHeight;
        expect(width).toBeLessThan(most);
      }
    const turned = textsOf(drawColumns(kit, rates, view)).filter(({ turn }) => turn === -90);
    expect(turned.map(({ text }) => text)).toContain('Samp.');
  });

  it('bear the letters of the classes of grain, and the scale of the drilling time', () => {
    const view = viewOf({ columns: ['grain', 'rate'] });
    const words = wordsOf(drawColumns(kit, rates, view));
    expect(words).toEqual(expect.arrayContaining(['Cl', 'Si', 'Sa', 'Gr', 'Co', 'Bo']));
    expect(words).toEqual(expect.arrayContaining(['min/m', '0', '20']));
  });

  it('are not drawn for a column that is not shown', () => {
    expect(wordsOf(drawColumns(kit, rates, viewOf({ columns: [] })))).not.toContain('Rate');
  });

  it('say both scales over the section, a question mark where no diameter is known', () => {
    expect(wordsOf(drawColumns(kit, rates, viewOf()))).toContain('1:200, Ø 1:10');
    expect(wordsOf(drawColumns(kit, rates, viewOf({ widthScale: undefined })))).toContain(
      '1:200, Ø ?',
    );
  });
});

describe('the room for words', () => {
  it('ends at match lines, and at the body elsewhere', () => {
    const middle = viewOf({ fromM: 10, first: false, last: false });
    expect(wordsRoom(middle)).toEqual({ top: middle.axis.top, foot: axisBottom(middle.axis) });
    const { body, ...alone } = viewOf();
    const { top, foot } = wordsRoom({ ...alone, body });
    expect(top).toBeGreaterThanOrEqual(body.y);
    expect(foot).toBeLessThanOrEqual(body.y + body.height);
    expect(top).toBeLessThan(alone.axis.top);
  });
});
