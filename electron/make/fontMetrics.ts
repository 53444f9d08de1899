/**
 * Writes assets/fonts/metrics.json from the shipped font files: what text is measured by.
 * Run with `npm run make:fonts` after changing a font.
 */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { openSync } from 'fontkit';
import type { FaceMetrics } from '../../core/base/text/metrics.ts';
import { fontFileNames } from '../files/fonts.ts';

const folder = path.resolve(import.meta.dirname, '../../assets/fonts');

/** Letters beyond are left out, since the PDF painter's font writer cannot write them. */
const lastCodePoint = 0xffff;

function metricsOf(file: string): FaceMetrics {
  const font = openSync(path.join(folder, file));
  if (!('characterSet' in font)) throw new Error(`${file} is a collection, not one font`);
  const { unitsPerEm, capHeight, ascent: ascender, descent: descender } = font;
  const advances: Record<string, number> = {};
  for (const code of font.characterSet.filter((one) => one <= lastCodePoint))
    advances[String(code)] = font.glyphForCodePoint(code).advanceWidth;
  return { unitsPerEm, capHeight, ascender, descender, advances };
}

const metrics = Object.fromEntries(
  Object.entries(fontFileNames).map(([face, file]) => [face, metricsOf(file)]),
);
writeFileSync(path.join(folder, 'metrics.json'), `${JSON.stringify(metrics)}\n`);
