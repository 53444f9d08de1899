import { create } from 'fontkit';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { faceIds } from '../../../core/base/text/metrics.ts';
import { readFonts } from '../../../electron/files/fonts.ts';

describe('the shipped fonts', () => {
  it.each(faceIds)('are measured as the file of the %s face says', (face) => {
    const { metrics, files } = readFonts();
    const font = create(Buffer.from(files[face]));
    if (!('glyphForCodePoint' in font)) throw new Error('a collection of fonts');
    for (const letter of 'Aé8≤—') {
      const code = letter.codePointAt(0)!;
      const advance = font.hasGlyphForCodePoint(code)
        ? font.glyphForCodePoint(code).advanceWidth
        : undefined;
      expect(metrics[face].advances[String(code)]).toBe(advance);
    }
  });

  it('are missed aloud in a folder without them', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-fonts-'));
    expect(() => readFonts(folder)).toThrow('metrics.json');
    rmSync(folder, { recursive: true });
  });
});
