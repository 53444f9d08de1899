import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { group } from '../../shapes.ts';
import { blockTitle, blockTitleHeight, type Block } from '../block.ts';
import { drawBar, scaleWords, type Bar } from '../scaleBars.ts';
import { detailWordsIn } from './words/languages.ts';

/** A drawing of one part of the well at a scale of its own. */
export interface Detail {
  readonly name: string;
  readonly title: string;
  readonly bar: Omit<Bar, 'says'>;
  readonly width: PaperMm;
  /** Of the drawing alone. */
  readonly height: PaperMm;
  /** Where its bar stands from its upper left corner; under it where absent. */
  readonly barAt?: readonly [right: PaperMm, down: PaperMm];
  draw(x: PaperMm, y: PaperMm): Item[];
}

const barHeight: PaperMm = 10;
const barRoom: PaperMm = 24;

/** A detail under its title, which says the scale, with a scale bar under it. */
export function layDetail(kit: Kit, detail: Detail): Block & { readonly width: PaperMm } {
  const { name, title, bar, width, height, barAt } = detail;
  const [right, down] = barAt ?? [2, height + 5];
  const says = detailWordsIn(kit.words.language).scale;
  return {
    width,
    height: blockTitleHeight + 2 + height + (barAt ? 0 : barHeight),
    draw: (x, y) => [
      group(name, [
        ...blockTitle(kit, `${title}, ${scaleWords(bar.scale)}`, x, y, width),
        ...detail.draw(x, y + blockTitleHeight + 2),
        drawBar(kit, { ...bar, says }, x + right, y + blockTitleHeight + 2 + down, barRoom),
      ]),
    ],
  };
}
