import type { Ink } from '../../items.ts';

type Rgb = readonly [red: number, green: number, blue: number];

/**
 * Colours of the ground by the words of three languages, in their stems: light enough that black
 * letters on them stay legible, also as a screen of dots (a value of our own).
 */
const tints: readonly (readonly [stems: RegExp, tint: Rgb])[] = [
  [/^(brown|brun|marron|castanh|acastanh|marrom)/, [226, 202, 176]],
  [/^(red|roug|vermelh|avermelh)/, [240, 190, 178]],
  [/^(rust|rouill|ferrug)/, [232, 192, 160]],
  [/^(yellow|jaun|amarel|buff|cream|crème|creme|ochr|ocr)/, [246, 232, 168]],
  [/^(orang|laranj|alaranj)/, [247, 210, 166]],
  [/^(gr[ea]y|gris|cinz|acinz)/, [214, 214, 214]],
  [/^(black|noir|pret|negr|enegr)/, [184, 184, 184]],
  [/^(whit|blanc|blanch|branc|esbranq|milk)/, [255, 255, 255]],
  [/^(green|vert|verd|esverd|oliv)/, [204, 224, 192]],
  [/^(blu|bleu|azul)/, [200, 214, 234]],
  [/^(pink|ros|arros)/, [247, 212, 216]],
  [/^(purpl|violet|violac|rox|arrox)/, [222, 204, 228]],
  [/^(beige|bege|tan|sable)/, [240, 226, 202]],
];

const lighter = /^(light|pale|clair|claire|pâle|clar[oa]|pálid[oa])$/;
const darker = /^(dark|foncé|foncée|sombre|escur[oa])$/;

function shaded(value: number, words: readonly string[]): number {
  if (words.some((word) => lighter.test(word))) return value + (255 - value) * 0.5;
  return words.some((word) => darker.test(word)) ? value * 0.9 : value;
}

const hex = (value: number) => Math.round(value).toString(16).padStart(2, '0');

/** A light tint of a colour as it was written, the mean of all it names; white where none is known. */
export function tintOf(colour: string): Ink {
  const words = colour
    .normalize('NFC')
    .toLowerCase()
    .split(/[^\p{L}]+/u);
  const found = words.flatMap((word) => {
    const tint = tints.find(([stems]) => stems.test(word))?.[1];
    return tint ? [tint] : [];
  });
  if (found.length === 0) return '#ffffff';
  const mean = ([0, 1, 2] as const).map(
    (at) => found.reduce((sum, tint) => sum + tint[at], 0) / found.length,
  );
  return `#${mean.map((value) => hex(shaded(value, words))).join('')}`;
}
