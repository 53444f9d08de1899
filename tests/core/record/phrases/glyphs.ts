import { readFileSync } from 'node:fs';
import type { Fonts } from '../../../../core/base/text/metrics.ts';

const metrics = new URL('../../../../assets/fonts/metrics.json', import.meta.url);
const { regular } = JSON.parse(readFileSync(metrics, 'utf8')) as Fonts;

/** Whether the regular face lacks a letter of a text. */
export function lacksGlyph(text: string): boolean {
  const letters = [...text].filter((letter) => letter.trim() !== '');
  return letters.some((letter) => regular.advances[letter.codePointAt(0)!] === undefined);
}
