import { describe, expect, it } from 'vitest';
import {
  columnNames,
  drawColumns,
  headHeight,
  layColumns,
  wordsRoom,
} from '../../../../core/drawing/parts/columns.ts';
import { axisBottom } from '../../../../core/drawing/scale.ts';
import { kit, textsOf, viewOf, wordsOf } from '../sample.ts';

describe('columns', () => {
  it.each([180, 210])('fill a width of %d mm one beside the other', (width) => {
    const columns = layColumns(20, width, true);
    let at = 20;
    for (const name of columnNames) {
      expect(columns[name].x).toBeCloseTo(at, 9);
      at += columns[name].width;
    }
    expect(at).toBeCloseTo(20 + width, 9);
  });

  it('give the room of the drilling rate to the descriptions where there is none', () => {
    const [without, withRate] = [false, true].map((has) => layColumns(20, 180, has));
    expect(without!.rate.width).toBe(0);
    expect(without!.description.width).toBe(withRate!.description.width + withRate!.rate.width);
    expect(without!.casing).toEqual(withRate!.casing);
  });

  it('have their titles over the body', () => {
    const view = viewOf();
    for (const { y } of textsOf(drawColumns(kit, view))) {
      expect(y).toBeGreaterThan(view.body.y - headHeight);
      expect(y).toBeLessThan(view.body.y);
    }
  });

  it('say both scales over the section, a question mark where no diameter is known', () => {
    expect(wordsOf(drawColumns(kit, viewOf()))).toContain('1:200, Ø 1:10');
    expect(wordsOf(drawColumns(kit, viewOf({ widthScale: undefined })))).toContain('1:200, Ø ?');
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
