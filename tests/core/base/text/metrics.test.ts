import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import metricsJson from '../../../../assets/fonts/metrics.json' with { type: 'json' };
import {
  emForCapitals,
  faceIds,
  missingGlyph,
  runsOf,
  runWidth,
  textWidth,
  type FaceId,
  type Fonts,
} from '../../../../core/base/text/metrics.ts';

const fonts = metricsJson as Fonts;
const folder = path.resolve(import.meta.dirname, '../../../../assets/fonts');
const files: Readonly<Record<FaceId, string>> = {
  regular: 'SourceSans3-Regular.ttf',
  bold: 'SourceSans3-SemiBold.ttf',
  fallback: 'NotoSans-Regular.ttf',
};

function openFont(face: FaceId): fontkit.Font {
  const font = fontkit.create(readFileSync(path.join(folder, files[face])));
  if (!('characterSet' in font)) throw new Error('a collection');
  return font;
}

/** Offset of a table in a TrueType file, from its directory (OpenType specification, `otff`). */
function tableAt(file: Buffer, tag: string): number {
  for (let at = 12; at < 12 + file.readUInt16BE(4) * 16; at += 16)
    if (file.toString('latin1', at, at + 4) === tag) return file.readUInt32BE(at + 8);
  throw new Error(`no table ${tag}`);
}

/** Advance of a glyph read from the file's own hmtx table; the last one goes for all after it. */
function advanceIn(file: Buffer, glyph: number): number {
  const counted = file.readUInt16BE(tableAt(file, 'hhea') + 34);
  return file.readUInt16BE(tableAt(file, 'hmtx') + 4 * Math.min(glyph, counted - 1));
}

describe.each(faceIds)('the metrics of the face %s', (face) => {
  const font = openFont(face);
  const file = readFileSync(path.join(folder, files[face]));
  const { unitsPerEm, capHeight, ascender, descender, advances } = fonts[face];

  // Source: the shipped font's own head, OS/2 and hhea tables.
  it('has the em, capital height, ascender and descender of the font', () => {
    expect(unitsPerEm).toBe(file.readUInt16BE(tableAt(file, 'head') + 18));
    expect(capHeight).toBe(file.readInt16BE(tableAt(file, 'OS/2') + 88));
    expect(ascender).toBe(file.readInt16BE(tableAt(file, 'hhea') + 4));
    expect(descender).toBe(file.readInt16BE(tableAt(file, 'hhea') + 6));
  });

  // Source: the shipped font's own hmtx table.
  it('has every letter of the font that the PDF can write with its advance, and no other', () => {
    const writable = font.characterSet.filter((code) => code <= 0xffff);
    const letters = [...new Set(writable)].map(String).sort();
    expect(Object.keys(advances).sort()).toEqual(letters);
    const wrong = letters.filter(
      (code) => advances[code] !== advanceIn(file, font.glyphForCodePoint(Number(code)).id),
    );
    expect(wrong).toEqual([]);
  });
});

describe('emForCapitals', () => {
  it('makes capitals stand as high as asked', () => {
    const em = emForCapitals(fonts, 2.5);
    expect((em * fonts.regular.capHeight) / fonts.regular.unitsPerEm).toBeCloseTo(2.5, 12);
  });
});

describe('runsOf', () => {
  it('keeps text of one face in one run', () => {
    expect(runsOf(fonts, 'bold', 'Puits 12, Kalé')).toEqual([
      { text: 'Puits 12, Kalé', face: 'bold' },
    ]);
  });

  it('composes accents and makes every space a plain one', () => {
    expect(runsOf(fonts, 'regular', 'Kale\u0301\u00A0\tb')).toEqual([
      { text: 'Kal\u00e9  b', face: 'regular' },
    ]);
  });

  it('takes a letter that the face lacks from the fallback, and goes back', () => {
    const lacked = String.fromCodePoint(
      Number(Object.keys(fonts.fallback.advances).find((code) => !fonts.regular.advances[code])),
    );
    expect(runsOf(fonts, 'regular', `a${lacked}b`).map(({ face }) => face)).toEqual([
      'regular',
      'fallback',
      'regular',
    ]);
  });

  it('shows a letter that no face has', () => {
    expect(runsOf(fonts, 'regular', 'a\u{1F4A7}')).toEqual([
      { text: `a${missingGlyph}`, face: 'regular' },
    ]);
  });

  it('has a glyph for the sign that stands for a missing one', () => {
    const code = String(missingGlyph.codePointAt(0));
    expect(fonts.regular.advances[code]).toBeGreaterThan(0);
    expect(fonts.bold.advances[code]).toBeGreaterThan(0);
  });
});

describe('textWidth', () => {
  it('adds the advances up, em for em', () => {
    const font = openFont('regular');
    const units = [...'12.50 m'].reduce(
      (sum, letter) => sum + font.glyphForCodePoint(letter.codePointAt(0)!).advanceWidth,
      0,
    );
    expect(textWidth(fonts, 'regular', '12.50 m', 4)).toBeCloseTo((units / 1000) * 4, 9);
  });

  it('gives all figures one width, so that columns line up', () => {
    const widths = [...'0123456789'].map((figure) => textWidth(fonts, 'regular', figure, 10));
    expect(new Set(widths).size).toBe(1);
  });

  it.each([
    'a\u2610b',
    'Kale\u0301, 12\u00A0m – 3 ≥ 2 …',
    'A\u030Angstr\u00f6m \u03a9',
    '\u1112\u1161 \u{1F4A7}\tb',
  ])('is the sum of its runs: %j', (text) => {
    const runs = runsOf(fonts, 'bold', text).reduce((sum, run) => sum + runWidth(fonts, run, 3), 0);
    expect(textWidth(fonts, 'bold', text, 3)).toBeCloseTo(runs, 12);
  });
});
