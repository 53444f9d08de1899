import { plainWords } from '../words/lexicon.ts';
import { lengthUnitOf, type LengthUnit } from '../tables/units.ts';

/** A heading without its unit, and the unit. */
export interface PlainHeading {
  /** Small letters without accents and signs; words with one space between. */
  readonly words: string;
  readonly unit?: LengthUnit;
}

const spelled: Readonly<Record<string, LengthUnit>> = {
  '"': 'in',
  inch: 'in',
  inches: 'in',
  pouces: 'in',
  pol: 'in',
  "'": 'ft',
  pieds: 'ft',
  pes: 'ft',
  mtr: 'm',
  mbgl: 'm',
  'm bgl': 'm',
  'mm ': 'mm',
};

function unitOf(text: string): LengthUnit | undefined {
  const plain = plainWords(text).trim();
  return Object.hasOwn(spelled, plain) ? spelled[plain] : lengthUnitOf(plain);
}

/** Words of a heading: camelCase and marks between words count as spaces. */
function wordsOf(text: string): string {
  return plainWords(text.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Takes a unit off a heading: in brackets, or as its last word. */
export function plainHeading(heading: string): PlainHeading {
  const bracketed = /^(.*?)\s*[([{]\s*([^)\]}]+?)\s*[)\]}]\.?\s*(.*)$/s.exec(heading.slice(0, 200));
  const inside = bracketed ? unitOf(bracketed[2]!) : undefined;
  if (bracketed && inside)
    return { words: wordsOf(`${bracketed[1]} ${bracketed[3]}`), unit: inside };
  const words = wordsOf(heading.slice(0, 200));
  const [, front, last] = /^(.+) (\S+)$/.exec(words) ?? [];
  const unit = /["']\s*$/.test(heading) ? unitOf(heading.trim().slice(-1)) : last && unitOf(last);
  if (!unit) return { words };
  return { words: last !== undefined && unitOf(last) === unit ? front! : words, unit };
}
