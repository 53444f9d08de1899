import type { Memory } from '../base/memory.ts';
import type { Fonts } from '../base/text/metrics.ts';
import type { SheetWords } from './words/words.ts';

/** What every part of a paper is handed: the faces to measure by and the words of its language. */
export interface Kit {
  readonly fonts: Fonts;
  readonly words: SheetWords;
  /** Of a paper that is drawn again at every stroke of a key; it holds for one set of faces. */
  readonly memory?: Memory;
}

/**
 * What a part gives for its arguments, from the kit's memory where that knows. A part that is
 * given no more than it looks at is found again more often.
 */
export function again<A extends readonly unknown[], T>(
  kit: Kit,
  question: string,
  part: (kit: Kit, ...of: A) => T,
  ...of: A
): T {
  if (!kit.memory) return part(kit, ...of);
  return kit.memory.recall(
    `${kit.words.language} ${question}`,
    (...args: A) => part(kit, ...args),
    of,
  );
}
