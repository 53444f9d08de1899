import type { BoundSheet } from '../boundPapers.ts';

/** What is said of each paper of a well. */
export type PaperSays = Readonly<Record<BoundSheet, string>>;

/** A heading with what is said under it. */
export interface ReadingText {
  readonly title: string;
  readonly says: readonly string[];
}

/** Words of the page that tells how to read the binder. */
export interface ReadingWords {
  readonly finding: ReadingText;
  readonly papers: { readonly title: string; readonly each: PaperSays };
  readonly depths: ReadingText;
  readonly units: ReadingText;
  readonly signs: ReadingText;
  readonly yields: ReadingText;
  readonly water: ReadingText;
  readonly cautions: ReadingText;
}
