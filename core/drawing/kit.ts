import type { Fonts } from '../base/text/metrics.ts';
import type { SheetWords } from './words/words.ts';

/** What every part of a paper is handed: the faces to measure by and the words of its language. */
export interface Kit {
  readonly fonts: Fonts;
  readonly words: SheetWords;
}
