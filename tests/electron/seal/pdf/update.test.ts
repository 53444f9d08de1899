import { describe, expect, it } from 'vitest';
import { amended, lengthened, listOf } from '../../../../electron/seal/pdf/amend.ts';
import {
  dictionaryOf,
  objectAt,
  pagesOf,
  readDocument,
  valueAt,
} from '../../../../electron/seal/pdf/document.ts';
import { nextNumber, updateOf } from '../../../../electron/seal/pdf/update.ts';
import { Unparsed } from '../../../../electron/seal/pdf/scan.ts';
import { complaintsAbout } from '../../../reading/tools.ts';
import { paper } from '../sealed.ts';

const pdf = paper();
const added = (objects: [number, string][]) =>
  new Uint8Array(
    Buffer.concat([pdf, Buffer.from(updateOf(readDocument(pdf), new Map(objects)), 'latin1')]),
  );

describe('what is written behind a PDF', () => {
  it('is read back, in stretches of numbers that need not follow each other', () => {
    const document = readDocument(pdf);
    const next = nextNumber(document);
    const later = readDocument(
      added([
        [next + 4, '(e)'],
        [next, '(a)'],
        [next + 1, '(b)'],
      ]),
    );
    const values = [next, next + 1, next + 4].map((at) => valueAt(later, objectAt(later, at)));
    expect(values).toEqual(['(a)', '(b)', '(e)']);
    expect(nextNumber(later)).toBe(next + 5);
    expect(pagesOf(later)).toEqual(pagesOf(document));
  });

  it('is taken by independent readers, with an object replaced', () => {
    const document = readDocument(pdf);
    const [page] = pagesOf(document);
    const changed = added([[page!, amended(document, page!, 'Rotate', '90')]]);
    expect(complaintsAbout(changed)).toBe('');
    expect(dictionaryOf(readDocument(changed), page!).has('Rotate')).toBe(true);
  });

  it('sets an entry anew and lengthens an array, be it there or elsewhere', () => {
    const next = nextNumber(readDocument(pdf));
    const document = readDocument(
      added([
        [next, `<< /A [1 0 R (x)] /B ${next + 1} 0 R >>`],
        [next + 1, '[(far)]'],
      ]),
    );
    expect(amended(document, next, 'A', '2')).toBe(`<< /A 2 /B ${next + 1} 0 R >>`);
    expect(lengthened(document, next, 'A', '(y)')).toContain('/A [1 0 R (x) (y)]');
    expect(lengthened(document, next, 'B', '(y)')).toContain('/B [(far) (y)]');
    expect(lengthened(document, next, 'C', '(y)')).toContain('/C [(y)]');
    expect(listOf(document, next, 'C')).toEqual([]);
  });
});

describe('a PDF', () => {
  it('is not read where its tables run in a circle or lie elsewhere', () => {
    const text = Buffer.from(pdf).toString('latin1');
    const table = /startxref\s+(\d+)/.exec(text)![1]!;
    const circle = text.replace('trailer\n<<', `trailer\n<< /Prev ${table}`);
    const locked = text.replace('trailer\n<<', 'trailer\n<< /Encrypt 1 0 R');
    for (const bad of [circle, locked, text.replace(table, '7'), text.slice(0, 900)])
      expect(() => readDocument(Buffer.from(bad, 'latin1'))).toThrow(Unparsed);
  });
});
