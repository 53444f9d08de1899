import type { PaperMm } from '../../../base/units.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { Kit } from '../../kit.ts';
import type { CommitteeWords } from './words.ts';

/** What the parts of the committee sheet are handed. */
export interface CommitteeKit extends Kit {
  /** The words of this sheet alone; `words` are those of all sheets. */
  readonly own: CommitteeWords;
  readonly practice: Practice;
}

/** Space between blocks, down and across. */
export const blockGap: PaperMm = 1.8;
export const columnGap: PaperMm = 4.5;
