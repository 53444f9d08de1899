import type { LevelState } from '../../record/water.ts';
import type { Chapter } from '../chapters.ts';

/** What changed between two records, in one language, besides the words that sheets have. */
export interface ChangeWords {
  /** With `{what}`, `{now}` and `{before}`. */
  readonly changed: string;
  readonly added: string;
  readonly removed: string;
  /** With `{chapter}`: something changed that has no sentence of its own. */
  readonly other: string;
  /** With `{count}`: changes that are not told. */
  readonly more: string;
  readonly nothing: string;
  /** Of the first revision of a record. */
  readonly first: string;
  readonly chapters: Readonly<Record<Chapter, string>>;
  /** With `{day}`. */
  readonly levels: Readonly<Record<LevelState, string>>;
  readonly of: Readonly<
    Record<'development' | 'test' | 'sample' | 'disinfection' | 'mark' | 'ground' | 'hole', string>
  >;
  readonly what: Readonly<
    Record<
      | 'name'
      | 'driller'
      | 'practice'
      | 'guidelines'
      | 'surrounding'
      | 'depthReached'
      | 'depthFound'
      | 'casingTop'
      | 'casingFoot'
      | 'strike'
      | 'pump'
      | 'pad'
      | 'drain'
      | 'soakaway'
      | 'fence'
      | 'photos'
      | 'groundSamples'
      | 'explanation'
      | 'readings',
      string
    >
  >;
}
