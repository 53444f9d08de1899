import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../../core/drawing/items.ts';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { openPdf, readPdf } from '../../../reading/pdf.ts';
import { complaintsAbout, fontsOf } from '../../../reading/tools.ts';
import { box, drawing, everyKind, fonts, line, page, picture, text, trial } from '../sample.ts';

const paint = (one: Drawing) => paintPdf(one, fonts.files);
const bytesOf = (pdf: Uint8Array) => Buffer.from(pdf).toString('latin1');
const count = (pdf: Uint8Array, words: string) => bytesOf(pdf).split(words).length - 1;

describe('a drawing as a PDF', () => {
  it('is sound in the eyes of two other programs', () => {
    expect(complaintsAbout(paint(trial))).toBe('');
  });

  it('carries the faces that it uses, with their letters to be searched for, and no other', () => {
    const used = { embedded: true, unicode: true };
    expect(fontsOf(paint(trial))).toEqual([
      { name: 'borefolio-regular', ...used },
      { name: 'borefolio-bold', ...used },
      { name: 'borefolio-fallback', ...used },
    ]);
    const plain = paint(drawing([page([text('plain', 20, 20)])]));
    expect(fontsOf(plain).map(({ name }) => name)).toEqual(['borefolio-regular']);
  });

  it('has the same bytes whenever and wherever it is made', () => {
    const zone = process.env['TZ'];
    process.env['TZ'] = 'Pacific/Auckland';
    const far = paint(trial);
    process.env['TZ'] = zone ?? 'UTC';
    expect(Buffer.compare(far, paint(trial))).toBe(0);
  });

  it('says what it is, when it was made and that it prints at full size', async () => {
    const pdf = paint({ ...trial, title: 'Forage 12 ≥ é (b)', language: 'fr-BF' });
    const file = await openPdf(pdf);
    const { info } = await file.getMetadata();
    expect(info).toMatchObject({
      PDFFormatVersion: '1.7',
      Title: 'Forage 12 ≥ é (b)',
      Author: 'The tests',
      Subject: 'Items of every kind',
      Creator: 'Borefolio',
      Language: 'fr-BF',
      CreationDate: "D:20240506050809+00'00'",
    });
    const preferences = (await file.getViewerPreferences()) as unknown as Map<string, unknown>;
    expect(preferences.get('PrintScaling')).toBe('None');
    expect(preferences.get('DisplayDocTitle')).toBe(true);
    expect(file.fingerprints[0]).toBe(trial.paperId);
  });

  it('has pages of the sizes that the drawing gives', async () => {
    const pages = await readPdf(paint(trial));
    const sizes = pages.map(({ width, height }) => [width, height].map((mm) => mm.toFixed(2)));
    expect(sizes).toEqual([
      ['210.00', '297.00'],
      ['420.00', '297.50'],
    ]);
  });

  it('fills before it strokes and keeps pens apart', async () => {
    const dashed = line(0, 0, 9, 9, { ink: '#ff0000', width: 1, dash: [2], cap: 'square' });
    const boxed = {
      kind: 'path',
      segments: box(1, 1, 9, 9),
      stroke: { ...dashed.stroke! },
    } as const;
    const plain = { ...boxed, fill: '#00ff00', stroke: { ink: '#000000', width: 0.5 } } as const;
    const file = await openPdf(paint(drawing([page([dashed, plain])])));
    const { fnArray, argsArray } = await (await file.getPage(1)).getOperatorList();
    const { OPS } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const of = (operator: number) =>
      argsArray.filter((_, at) => fnArray[at] === operator) as unknown[][];
    expect(of(OPS.setDash)).toEqual([
      [[5.6693], 0],
      [[], 0],
    ]);
    expect(of(OPS.setLineCap)).toEqual([[2], [0]]);
    expect(of(OPS.constructPath).map(([painting]) => painting)).toEqual([
      OPS.stroke,
      OPS.fillStroke,
    ]);
  });

  it('holds equal pictures once', () => {
    const at = (x: number, data = picture) =>
      ({ kind: 'image', x, y: 0, width: 9, height: 9, data, says: '' }) as const;
    expect(count(paint(drawing([page([at(0)])])), '/Subtype /Image')).toBe(1);
    const three = drawing([page([at(0), at(20)]), page([at(0)])]);
    expect(count(paint(three), '/Subtype /Image')).toBe(1);
    const odd = at(0, 'data:image/gif;base64,R0lG');
    expect(() => paint(drawing([page([odd])]))).toThrow('neither PNG nor JPEG');
  });

  it('writes links that print and that lead to a page or an address', async () => {
    const file = await openPdf(paint(trial));
    const links = await (await file.getPage(1)).getAnnotations();
    expect(links.map(({ annotationFlags }) => annotationFlags as number)).toEqual([4, 4]);
    const [page2, address] = links as [{ dest: [object]; rect: number[] }, { url: string }];
    expect(await file.getPageIndex(page2.dest[0] as never)).toBe(1);
    const mm = page2.rect.map((points) => Number(((points * 25.4) / 72).toFixed(2)));
    expect(mm).toEqual([20, 174, 80, 182]);
    expect(address.url).toBe('https://example.org/(%C3%A9)');
  });

  it('is refused where the drawing is at fault', () => {
    expect(() => paint(drawing([]))).toThrow('without pages');
    expect(() => paint({ ...trial, paperId: 'x' })).toThrow('paperId cannot be x');
    expect(() => paint({ ...trial, madeAt: 'today' })).toThrow('today is no ISO 8601 moment');
    expect(() => paint({ ...trial, language: 'en) /A (' })).toThrow('language cannot be');
    expect(() => paint(drawing([page(everyKind)]))).toThrow('leads to page 2');
  });
});
