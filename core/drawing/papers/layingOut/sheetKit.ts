import type { Practice } from '../../../practice/practice.ts';
import type { Kit } from '../../kit.ts';
import type { LayingOutWords } from './words.ts';

/** What the parts of the laying-out sheet are handed. */
export interface SheetKit extends Kit {
  /** The words of this sheet alone; `words` are those of all sheets. */
  readonly own: LayingOutWords;
  readonly practice: Practice;
  /** Of the organisation whose paper it is; the sheet has none of its own. */
  readonly disclaimer?: string;
}

/** Space between blocks. */
export const blockGap = 2;

/** Width of what stands under the head, clear of the frame line on either side. */
export const bodyWidth = 176;
export const bodyInset = 2;
