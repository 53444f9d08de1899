import { fieldWords as f, say } from '../parts/words.ts';
import type { TableShape } from '../editors/chapter.ts';
import { momentField } from '../editors/fields/moment.ts';
import { amountField, depthField, numberField } from '../editors/fields/number.ts';
import { textField } from '../editors/fields/text.ts';

/** The steps of pouring one fill: what went in, and where it was found to stand. */
export const poursTable = (heading: string): TableShape => ({
  heading,
  columns: [
    numberField('sacks', f.sacks, {}, { least: 0 }),
    amountField('litres', f.litres, 'L'),
    depthField('sounded', say.layingOut.pours.sounded),
    momentField('at', f.at),
  ],
  more: [textField('remark', f.remark)],
});
