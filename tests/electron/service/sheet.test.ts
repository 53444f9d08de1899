import DxfParser, { type ILwpolylineEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../electron/files/fonts.ts';
import { makeAsBuilt, type Sheet, type SheetOptions } from '../../../electron/service/sheet.ts';
import { longPlain } from '../../sheets/examples/longPlain.ts';

const usual: SheetOptions = {
  paper: 'A3',
  fonts: readFonts(),
  madeAt: '2026-01-31T12:00:00+00:00',
};
const made = (more: Partial<SheetOptions> = {}) => makeAsBuilt(longPlain(), { ...usual, ...more });

/** Read by the library dxf-parser, which knows nothing of the writer. */
function readDxf(sheet: Sheet, page: number) {
  const file = new DxfParser().parseSync(new TextDecoder('windows-1252').decode(sheet.dxf(page)));
  if (!file) throw new Error('Nothing was read');
  return file;
}

/** Every height of the lines of a layer, each once, from the top. */
function heightsOn(sheet: Sheet, layer: string): number[] {
  const lines = readDxf(sheet, 1).entities.filter(
    (one): one is ILwpolylineEntity => one.type === 'LWPOLYLINE' && one.layer === layer,
  );
  const heights = lines.flatMap(({ vertices }) => vertices.map(({ y }) => y));
  return [...new Set(heights)].sort((a, b) => b - a);
}

const breaksOf = ({ drawing }: Sheet) =>
  drawing.pages.flatMap(({ axes = [] }) => axes.map(({ stretches }) => stretches.length - 1));

describe('an as-built sheet whose axis is broken', () => {
  it('is a drawing file in true metres, above where the break was and below', () => {
    const sheet = made();
    expect(breaksOf(sheet)).toEqual([1]);
    // The sharp boundaries of the log and its end; the gradual one at 5 m slants from side to side.
    expect(heightsOn(sheet, 'CONTACT')).toEqual([-1, -4.65, -5, -5.35, -46, -60, -64]);
    // The head of the pump's rods is cut at the top of the drawing; its intake is at 40 m.
    expect(heightsOn(sheet, 'PUMP').at(-1)).toBe(-40);
    const pipes = heightsOn(sheet, 'PLAIN');
    expect(pipes.map((y) => pipes[0]! - y)).toEqual(pipes.map((_, at) => at * 3));
    expect(heightsOn(sheet, 'DEPTHBREAK')).toEqual([]);
  });

  it('has the same pages as a drawing file, and says the scale that its axis has there', () => {
    const sheet = made();
    const texts = readDxf(sheet, 1).entities.flatMap((one) => ('text' in one ? [one.text] : []));
    expect(sheet.svg(1)).toContain('1:200');
    expect(texts).toContain('1:500');
    expect(texts).not.toContain('1:200');
    expect(() => sheet.dxf(sheet.drawing.pages.length)).not.toThrow();
    expect(() => sheet.dxf(sheet.drawing.pages.length + 1)).toThrow('no page');
  });
});

describe('an as-built sheet whose axis shall be whole', () => {
  it('has no break and is another paper', () => {
    const whole = made({ brokenAxis: false });
    expect(breaksOf(whole).every((count) => count === 0)).toBe(true);
    expect(whole.drawing.paperId).not.toBe(made().drawing.paperId);
  });

  it('is the same paper as ever where it may be broken', () => {
    expect(made({ brokenAxis: true }).drawing).toEqual(made().drawing);
  });
});
