import { deflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { openBook } from '../../../../core/paint/pdf/book.ts';
import { complaintsAbout } from '../../../reading/tools.ts';
import { drawing, fonts, page, text } from '../sample.ts';

const deflate = (letters: string) => deflateSync(Buffer.from(letters, 'latin1')).toString('latin1');
const about = drawing([]);

function threePages() {
  const book = openBook(about, { fontFiles: fonts.files, deflate });
  for (const says of ['one', 'two', 'three']) book.add(page([text(says, 30, 40)]), {});
  return book;
}

const marks = [
  { title: 'Front', page: 1 },
  {
    title: 'Wells – Não',
    page: 2,
    under: [
      { title: 'a (b)', page: 2 },
      { title: 'c', page: 3 },
    ],
  },
];

describe('a document that grows page by page', () => {
  const pdf = threePages().bytes({
    bookmarks: marks,
    labels: [
      { page: 1, style: 'roman' },
      { page: 2, style: 'arabic', from: 41 },
      { page: 3, prefix: 'Cover' },
    ],
  });

  it('is sound in the eyes of two other programs', () => {
    expect(complaintsAbout(pdf)).toBe('');
  });

  it('names its pages and has its bookmarks, in any letters', async () => {
    const read = await getDocument({ data: new Uint8Array(pdf) }).promise;
    expect(await read.getPageLabels()).toEqual(['i', '41', 'Cover']);
    const outline = await read.getOutline();
    expect(outline.map(({ title }) => title)).toEqual(['Front', 'Wells – Não']);
    const under = outline[1]!.items as { title: string; dest: [{ num: number; gen: number }] }[];
    expect(under.map(({ title }) => title)).toEqual(['a (b)', 'c']);
    expect(await read.getPageIndex(under[1]!.dest[0])).toBe(2);
  });

  it('shows on each page what was painted on it', async () => {
    const read = await getDocument({ data: new Uint8Array(pdf) }).promise;
    const { items } = await (await read.getPage(2)).getTextContent();
    expect(items.map((one) => ('str' in one ? one.str : ''))).toEqual(['two']);
  });

  it('throws where a bookmark leads to a page that is not there', () => {
    expect(() => threePages().bytes({ bookmarks: [{ title: 'x', page: 4 }] })).toThrow('page 4');
  });

  it('is no document without a page', () => {
    expect(() => openBook(about, { fontFiles: fonts.files }).bytes()).toThrow('without pages');
  });
});
