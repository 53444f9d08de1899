import DxfParser, { type IEntity, type ILwpolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { paintDxf } from '../../../../core/paint/dxf/write.ts';
import type { Item, Page } from '../../../../core/drawing/items.ts';
import { box, drawing, fonts, line, page, text } from '../sample.ts';

/** Read by the library dxf-parser, which knows nothing of the writer. */
function read(items: readonly Item[], more: Partial<Page> = {}) {
  const bytes = paintDxf(drawing([{ ...page(items), ...more }]), 0, fonts.metrics);
  const file = new DxfParser().parseSync(new TextDecoder('windows-1252').decode(bytes));
  if (!file) throw new Error('Nothing was read');
  return file;
}

const linesOf = (entities: readonly IEntity[]) =>
  entities.filter((one): one is ILwpolylineEntity => one.type === 'LWPOLYLINE');

describe('a page as DXF', () => {
  it('is of the version of 2000, in metres', () => {
    const { header } = read([line(0, 0, 1, 1)]);
    expect(header['$ACADVER']).toBe('AC1015');
    // Code 6 of $INSUNITS is metres (from memory).
    expect(header['$INSUNITS']).toBe(6);
  });

  it('is as large as its paper, with y upwards, where it has no depth axis', () => {
    const [only] = linesOf(read([line(20, 20, 120, 20)]).entities);
    expect(only!.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0.02, 0.277],
      [0.12, 0.277],
    ]);
  });

  it('has ground level at zero and depth in metres downwards where it has one', () => {
    const spans = {
      water: { x: 0, width: 10 },
      ground: { x: 10, width: 20 },
      section: { x: 100, width: 40 },
    };
    const axis = {
      box: { x: 0, y: 40, width: 200, height: 200 },
      fromM: -1,
      toM: 39,
      stretches: [{ fromM: -1, toM: 39, top: 40 }],
      mmPerM: 5,
      spans,
    };
    // 30 m below ground stand 31 m below the top of the axis: 40 + 31 × 5 mm down the page.
    const [only] = linesOf(read([line(120, 45, 130, 195)], { axes: [axis] }).entities);
    expect(only!.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [2, -30],
    ]);
  });

  it('is not made of a page whose depth axis is broken: no depth below would be true', () => {
    const spans = {
      water: { x: 0, width: 10 },
      ground: { x: 10, width: 20 },
      section: { x: 100, width: 40 },
    };
    const stretches = [
      { fromM: 0, toM: 10, top: 40 },
      { fromM: 30, toM: 40, top: 97 },
    ];
    const box = { x: 0, y: 40, width: 200, height: 107 };
    const axis = { box, fromM: 0, toM: 40, stretches, mmPerM: 5, spans };
    expect(() => read([line(120, 45, 130, 195)], { axes: [axis] })).toThrow('axis is broken');
  });

  it('has a layer for each named group, whose clip cuts what stands in it', () => {
    const clip = { x: 20, y: 95, width: 20, height: 10 };
    const items = [line(10, 100, 60, 100), text('outside', 18, 100), text('inside', 22, 100)];
    const file = read([line(0, 0, 1, 0), { kind: 'group', name: 'log <column>', clip, items }]);
    expect(Object.keys(file.tables!.layer.layers)).toEqual(['0', 'LOG_COLUMN_']);
    const clipped = file.entities.filter(({ layer }) => layer === 'LOG_COLUMN_');
    expect(linesOf(clipped)[0]!.vertices.map(({ x }) => x)).toEqual([0.02, 0.04]);
    const words = clipped.filter((one): one is ITextEntity => one.type === 'TEXT');
    expect(words.map((one) => one.text)).toEqual(['inside']);
  });

  it('keeps every letter, fits text to its measured width and turns it', () => {
    const words = 'Té ³ – ’ Ɓ ≤ 5 % \\ {x}';
    const run = text(words, 20, 100, { turn: 90 });
    const [only] = read([run]).entities.filter((one): one is ITextEntity => one.type === 'TEXT');
    const shown = only!.text.replace(/\\U\+([0-9A-F]{4})/g, (_, code: string) =>
      String.fromCodePoint(parseInt(code, 16)),
    );
    expect(shown).toBe(words);
    expect(only!.rotation).toBe(-90);
    expect(only!.startPoint).toMatchObject({ x: 0.02, y: 0.197 });
    expect(only!.endPoint.y).toBeCloseTo(0.197 - run.width / 1000, 4);
  });

  it('draws hatches as strokes and fills, each with handles of their own', () => {
    const region: Item = { kind: 'region', segments: box(20, 60, 30, 30), hatch: 'dotted' };
    const cut: Item = { kind: 'region', segments: box(22.5, 60, 1, 30), hatch: 'dotted' };
    const bytes = paintDxf(drawing([page([region, cut])]), 0, fonts.metrics);
    const pairs = new TextDecoder('windows-1252').decode(bytes).split('\n');
    const values = (code: string) =>
      pairs.filter((_, at) => at % 2 === 1 && pairs[at - 1] === code);
    // The reader of these tests passes over fills. A tile of 7 by 9 mm has a dot of 1 mm.
    expect(values('0').filter((kind) => kind === 'HATCH')).toHaveLength(4 * 3);
    expect(linesOf(read([cut]).entities).length).toBeGreaterThan(0);
    expect(new Set(values('5')).size).toBe(values('5').length);
  });

  it('names dash patterns in its table', () => {
    const dashed = line(0, 0, 10, 0, { ink: '#000000', width: 0.35, dash: [3, 1] });
    const file = read([dashed]);
    expect(Object.keys(file.tables!.lineType.lineTypes)).toContain('DASH_3_1');
    expect(file.entities[0]!.lineType).toBe('DASH_3_1');
    expect(file.entities[0]!.lineweight).toBe(35);
  });

  it('is not made of a page that is not there', () => {
    expect(() => paintDxf(drawing([page([])]), 1, fonts.metrics)).toThrow('no page');
  });
});
