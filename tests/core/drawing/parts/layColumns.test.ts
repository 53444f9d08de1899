import { describe, expect, it } from 'vitest';
import { columnNames, switchedColumns } from '../../../../core/drawing/parts/columnNames.ts';
import { layColumns, usualWidths } from '../../../../core/drawing/parts/layColumns.ts';
import { columnsOver } from '../usualColumns.ts';

describe('columns', () => {
  it.each([180, 210, 267])('fill a width of %d mm one beside the other', (width) => {
    for (const shown of [[], ['rate'], switchedColumns] as const) {
      const columns = columnsOver(20, width, shown);
      let at = 20;
      for (const name of columnNames) {
        expect(columns[name].x).toBeCloseTo(at, 9);
        at += columns[name].width;
      }
      expect(at).toBeCloseTo(20 + width, 9);
    }
  });

  it('are never narrower than their least, with all of them on an upright A4 too', () => {
    const columns = columnsOver(20, 180, switchedColumns);
    for (const [name, { least }] of Object.entries(usualWidths))
      expect(columns[name as keyof typeof usualWidths].width).toBeGreaterThanOrEqual(least - 1e-9);
  });

  it('that are not shown give their room to the descriptions', () => {
    const [without, withRate] = [['description'], ['description', 'rate']] as const;
    const [narrow, wide] = [columnsOver(20, 180, withRate), columnsOver(20, 180, without)];
    expect(wide.rate.width).toBe(0);
    expect(wide.description.width).toBeCloseTo(narrow.description.width + narrow.rate.width, 9);
    expect(wide.casing.width).toBe(narrow.casing.width);
  });

  it('leave what nobody asked for to the descriptions, else to section and words beside it', () => {
    const described = columnsOver(20, 267, ['description']);
    expect(described.section.width).toBe(usualWidths.section.wanted);
    const bare = columnsOver(20, 267, []);
    expect(bare.section.width).toBeGreaterThan(usualWidths.section.wanted);
  });

  it('give words beside the section the room for one line, after the descriptions have theirs', () => {
    const calls = { casing: 38, fill: 30 };
    const wide = layColumns(20, 210, usualWidths, calls);
    expect([wide.casing.width, wide.fill.width]).toEqual([38, 30]);
    const narrow = layColumns(20, 160, usualWidths, calls);
    expect(narrow.description.width).toBeGreaterThan(usualWidths.description.least);
    expect(narrow.casing.width).toBe(usualWidths.casing.wanted);
  });
});
