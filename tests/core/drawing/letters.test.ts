import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingGlyph } from '../../../core/base/text/metrics.ts';
import {
  bound,
  fitted,
  letter,
  lettered,
  widthOf,
  wrapped,
} from '../../../core/drawing/letters.ts';
import { lineHeight } from '../../../core/drawing/pens.ts';
import { capitalsHigh, faceHas, widthByFont } from '../../sheets/measure.ts';
import { kit } from './sample.ts';

const { em } = letter(kit, 'x', 0, 0)[0]!;

/** Width by fontkit of a text in small lettering; what a face lacks comes from the fallback. */
function width(text: string): number {
  return [...text].reduce((sum, one) => {
    const face = faceHas('regular', one) ? 'regular' : 'fallback';
    return sum + widthByFont(face, one, em);
  }, 0);
}

const word = fc.oneof(
  fc.stringMatching(/^[A-Za-zéɓŋ0-9,.;()–]{1,12}$/),
  fc.stringMatching(/^[a-z]{30,60}$/),
);
const prose = fc.array(word, { minLength: 1, maxLength: 30 }).map((all) => all.join(' '));
const seeded = { seed: 3, numRuns: 300 };

describe('wrapped', () => {
  it('has no line wider than asked, by the font itself', () => {
    fc.assert(
      fc.property(prose, fc.double({ min: 12, max: 80, noNaN: true }), (text, widest) => {
        for (const one of wrapped(kit, text, widest))
          expect(width(one)).toBeLessThanOrEqual(widest + 1e-9);
      }),
      seeded,
    );
  });

  it('loses no letter and breaks at spaces where it can', () => {
    fc.assert(
      fc.property(prose, fc.double({ min: 12, max: 80, noNaN: true }), (text, widest) => {
        const lines = wrapped(kit, text, widest);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        const shortWords = text.split(' ').filter((one) => width(one) <= widest);
        const whole = lines.flatMap((one) => one.split(' '));
        expect(whole).toEqual(expect.arrayContaining(shortWords));
      }),
      seeded,
    );
  });

  it('fills its lines: no first word of a line would have gone on the line before', () => {
    const text =
      'silty SAND, fine, light grey, medium dense, water-bearing. Second strike at 18.20 m';
    const lines = wrapped(kit, text, 45);
    expect(lines.length).toBeGreaterThan(1);
    for (const [at, one] of lines.slice(1).entries())
      expect(width(`${lines[at]} ${one.split(' ')[0]}`)).toBeGreaterThan(45);
  });

  it('breaks a word that is longer than a line', () => {
    const lines = wrapped(kit, 'm'.repeat(60), 20);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join('')).toBe('m'.repeat(60));
  });

  it('keeps a figure and its unit together', () => {
    const text = `gravel pack 1.5–3${bound}mm`;
    for (let widest = 10; widest < 40; widest += 1)
      for (const one of wrapped(kit, text, widest)) expect(one.startsWith('mm')).toBe(false);
  });

  it('keeps the first line to its own width, empty where no word goes in', () => {
    const lines = wrapped(kit, 'casing top above ground', 30, {}, 12);
    expect(width(lines[0]!)).toBeLessThanOrEqual(12);
    expect(wrapped(kit, 'casing', 30, {}, 3)).toEqual(['', 'casing']);
  });

  it('has no lines for no words', () => {
    expect(wrapped(kit, ' \n\t ', 30)).toEqual([]);
  });
});

describe('fitted', () => {
  it('leaves a text that is narrow enough', () => {
    expect(fitted(kit, 'Committee', 40)).toBe('Committee');
  });

  it('cuts a wide one to its width with an ellipsis', () => {
    fc.assert(
      fc.property(prose, (text) => {
        const cut = fitted(kit, text, 15);
        expect(width(cut)).toBeLessThanOrEqual(15);
        if (cut !== text) expect(cut).toMatch(/…$/);
      }),
      seeded,
    );
  });
});

describe('letter', () => {
  it('anchors a line at its start, middle or end', () => {
    const wide = width('12.50');
    const xOf = (anchor: 'start' | 'middle' | 'end') =>
      letter(kit, '12.50', 50, 9, { anchor })[0]!.x;
    expect(xOf('start')).toBe(50);
    expect(xOf('middle')).toBeCloseTo(50 - wide / 2, 9);
    expect(xOf('end')).toBeCloseTo(50 - wide, 9);
  });

  it('makes one item for each face, one after the other', () => {
    const items = letter(kit, 'aƙb', 0, 0);
    expect(items.map(({ face, text }) => [face, text])).toEqual([
      ['regular', 'a'],
      ['fallback', 'ƙ'],
      ['regular', 'b'],
    ]);
    expect(items[2]!.x).toBeCloseTo(width('a') + width('ƙ'), 9);
  });

  it('follows its turn from face to face', () => {
    const [first, second] = letter(kit, 'aƙ', 10, 10, { turn: 90 });
    expect(second!.x).toBeCloseTo(first!.x, 9);
    expect(second!.y).toBeCloseTo(10 + width('a'), 9);
  });

  it('shows a box for a letter that no font has', () => {
    expect(letter(kit, '水', 0, 0)[0]!.text).toBe(missingGlyph);
  });

  it('stands capitals as high as its lettering says', () => {
    for (const [lettering, high] of [
      ['small', 1.8],
      ['normal', 2.5],
      ['title', 5],
    ] as const)
      expect(capitalsHigh(letter(kit, 'H', 0, 0, { lettering })[0]!.em)).toBeCloseTo(high, 9);
  });

  it('measures a text as the font does', () => {
    expect(widthOf(kit, 'uPVC 110 × 4.2')).toBeCloseTo(width('uPVC 110 × 4.2'), 9);
  });
});

describe('lettered', () => {
  it('sets lines one line height apart, the first under the top', () => {
    const [first, second] = lettered(kit, ['one', 'two'], 0, 20);
    expect(first!.y).toBeGreaterThan(20 + 1.8);
    expect(first!.y).toBeLessThan(20 + lineHeight('small'));
    expect(second!.y - first!.y).toBeCloseTo(lineHeight('small'), 9);
  });
});
