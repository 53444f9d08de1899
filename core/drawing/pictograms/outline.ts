import type { Segment } from '../items.ts';

/** Numbers that follow each verb of an outline. */
const takes = { M: 2, L: 2, C: 6, Z: 0 } as const;

type Verb = keyof typeof takes;

function isVerb(word: string): word is Verb {
  return word in takes;
}

/**
 * Reads an outline as vector drawings write it, with M, L, C and Z in absolute units, a verb before
 * each of its points. One that is written otherwise is a defect of a file of ours, and throws.
 */
export function readOutline(text: string): Segment[] {
  const words = text.match(/[A-Za-z]|-?[\d.]+/g) ?? [];
  const segments: Segment[] = [];
  for (let at = 0; at < words.length;) {
    const verb = words[at]!;
    if (!isVerb(verb)) throw new Error(`“${text}” has “${verb}” where a verb was awaited.`);
    const numbers = words.slice(at + 1, at + 1 + takes[verb]).map(Number);
    if (numbers.length < takes[verb] || numbers.some(Number.isNaN))
      throw new Error(`“${text}” lacks numbers after ${verb}.`);
    segments.push([verb, ...numbers] as unknown as Segment);
    at += 1 + takes[verb];
  }
  return segments;
}
