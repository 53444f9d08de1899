import type { PaperMm } from '../../../base/units.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { Kit } from '../../kit.ts';
import type { CommitteeWords } from './words.ts';

/** What the parts of the committee sheet are handed. */
export interface CommitteeKit extends Kit {
  /** The words of this sheet alone; `words` are those of all sheets. */
  readonly own: CommitteeWords;
  readonly practice: Practice;
  readonly spacing: Spacing;
}

/** What the parts of a sheet keep free, and how high are those that may be lower. */
export interface Spacing {
  /** Between blocks, down. */
  readonly gap: PaperMm;
  /** From the rule over a block to what stands under its title. */
  readonly title: PaperMm;
  /** Side of the signs of what is kept away. */
  readonly sign: PaperMm;
  /** Height of a figure with its label and note. */
  readonly figure: PaperMm;
  /** Height of the boxes that are signed in. */
  readonly marks: PaperMm;
}

export const roomy: Spacing = { gap: 1.8, title: 6.6, sign: 12.4, figure: 16.2, marks: 17 };
export const close: Spacing = { gap: 0.9, title: 6, sign: 10.4, figure: 16.2, marks: 15 };
/** As close as a sheet may be set to stay on one page. */
export const closest: Spacing = { gap: 0.7, title: 5.8, sign: 8.4, figure: 15.4, marks: 13 };

/** Between blocks, across. */
export const columnGap: PaperMm = 4.5;
