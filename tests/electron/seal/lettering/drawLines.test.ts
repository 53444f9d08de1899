import { inflateSync } from 'node:zlib';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { readFonts } from '../../../../electron/files/fonts.ts';
import { contoursOf } from '../../../../electron/seal/lettering/contours.ts';
import { drawLines } from '../../../../electron/seal/lettering/drawLines.ts';
import { openFace } from '../../../../electron/seal/lettering/trueType.ts';

const { files } = readFonts();
/** Letters alone, letters with accents put together, hooked ones, figures, signs. */
const letters = 'AbgÉçãøɓŋƴ 08,–()₂';

/** Ends and control points of an outline's box, as an independent reader of fonts has them. */
function boxBy(font: Font, letter: string): number[] {
  const { minX, minY, maxX, maxY } = font.glyphForCodePoint(letter.codePointAt(0)!).path.cbox;
  return Number.isFinite(minX) ? [minX, minY, maxX, maxY] : [];
}

describe.each(['regular', 'bold', 'fallback'] as const)('the face %s', (id) => {
  const face = openFace(files[id]);
  const font = create(Buffer.from(files[id])) as Font;

  it.each([...letters])('has the outline of %s that another reader finds', (letter) => {
    const glyph = face.glyphOf(letter.codePointAt(0)!);
    const known = font.glyphForCodePoint(letter.codePointAt(0)!);
    expect([glyph, face.advanceOf(glyph)]).toEqual([known.id, known.advanceWidth]);
    const points = contoursOf(face, glyph).flat();
    const xs = points.map(({ x }) => x);
    const ys = points.map(({ y }) => y);
    const box = points.length
      ? [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
      : [];
    expect(box.map(Math.round)).toEqual(boxBy(font, letter).map(Math.round));
    const ends = known.path.commands.filter(({ command }) => command === 'closePath').length;
    expect(contoursOf(face, glyph)).toHaveLength(ends);
  });

  it('has no shape for a letter that it lacks', () => {
    expect(face.glyphOf(0x4e00)).toBe(0);
    expect(face.glyphOf(0x1d538)).toBe(0);
  });
});

describe('lines in a seal’s box', () => {
  const box = { page: 1, x: 0, y: 0, width: 45, height: 14 };
  const drawn = (lines: readonly string[]) =>
    inflateSync(Buffer.from(drawLines({ box, lines, face: files.regular }), 'latin1')).toString();
  const scale = (text: string) => Number(/q (\S+) 0 0/.exec(text)![1]) * 1000;

  it('are drawn by paths alone', () => {
    const text = drawn(['Délio Kalvāro', 'supervisor']);
    const operators = new Set(text.match(/[A-Za-z]+$/gm));
    expect([...operators].toSorted()).toEqual(['Q', 'c', 'cm', 'f', 'g', 'h', 'l', 'm', 're']);
  });

  it('stand on white that covers the box, so that blanks to fill in do not show through', () => {
    const [width, height] = [box.width, box.height].map((mm) => (mm * 72) / 25.4);
    const [, across, down] = /^1 g\n0 0 (\S+) (\S+) re\nf\n0 g\n/.exec(drawn(['x']))!;
    expect(Number(across)).toBeCloseTo(width!, 1);
    expect(Number(down)).toBeCloseTo(height!, 1);
  });

  it('are ten points high at most, and smaller where they would not fit', () => {
    expect(scale(drawn(['x']))).toBeCloseTo(10, 1);
    const face = openFace(files.regular);
    const long = 'A long name of many parts that goes on and on, supervisor';
    const em = scale(drawn([long]));
    const wide = [...long].reduce(
      (sum, letter) => sum + face.advanceOf(face.glyphOf(letter.codePointAt(0)!)),
      0,
    );
    expect((wide / face.unitsPerEm) * em).toBeLessThanOrEqual((45 * 72) / 25.4 - 4 + 0.1);
    expect(scale(drawn(Array.from({ length: 8 }, () => 'x')))).toBeLessThan(4);
  });
});
