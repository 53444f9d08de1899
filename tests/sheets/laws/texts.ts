import type { Page } from '../../../core/drawing/items.ts';
import { capitalsHigh, faceHas, widthByFont } from '../measure.ts';
import { boxOfText } from '../extent.ts';
import { textsOn, type Extent, type PlacedText } from '../placed.ts';
import { mm, type Law } from './law.ts';

/** Texts on one line may touch; a hundredth of a millimetre is rounding. */
const slack = 0.01;

interface Boxed {
  readonly text: PlacedText;
  readonly box: Extent;
}

function overlap(a: Extent, b: Extent): boolean {
  const across = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
  return across > slack && Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > slack;
}

function named({ item, groups, source }: PlacedText): string {
  const last = groups.at(-1) ?? 'page';
  return `“${item.text}” of ${last} (${source ?? 'no source'}) at ${mm(item.x)} ${mm(item.y)}`;
}

function overlapsOn(page: Page): [PlacedText, PlacedText][] {
  const boxed = textsOn(page).map((text): Boxed => ({ text, box: boxOfText(text.item) }));
  boxed.sort((a, b) => a.box[1] - b.box[1]);
  return boxed.flatMap((one, at) => {
    const found: [PlacedText, PlacedText][] = [];
    for (let next = at + 1; next < boxed.length; next += 1) {
      const other = boxed[next]!;
      if (other.box[1] >= one.box[3]) break;
      if (overlap(one.box, other.box)) found.push([one.text, other.text]);
    }
    return found;
  });
}

/** No two texts of a page stand on one another. */
export const textsApart: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    overlapsOn(page).map((pair) => `page ${at + 1}: ${pair.map(named).join(' over ')}`),
  );

/** White that a print of a modest office printer keeps between two lines of a cell. */
const lineGap = 0.4;

/** Lines of the title block that stand over each other have white between tails and capitals. */
export const titleLinesApart: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => {
    const title = textsOn(page).filter(({ groups }) => groups.includes('titleBlock'));
    const boxed = title.map((text): Boxed => ({ text, box: boxOfText(text.item) }));
    return boxed.flatMap((upper) =>
      boxed
        .filter(({ text, box }) => {
          const over = upper.text.item.y < text.item.y;
          const across = Math.min(upper.box[2], box[2]) - Math.max(upper.box[0], box[0]);
          return over && across > slack && box[1] - upper.box[3] < lineGap;
        })
        .map((lower) => `page ${at + 1}: ${named(lower.text)} is close to ${named(upper.text)}`),
    );
  });

/** Capitals stand at least as high as ISO 3098's smallest lettering, 1.8 mm (from memory). */
export const lettersLargeEnough: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    textsOn(page)
      .filter(({ item }) => capitalsHigh(item.em) < 1.8 - 1e-6)
      .map((one) => `page ${at + 1}: ${named(one)} is ${mm(capitalsHigh(one.item.em))} high`),
  );

/** Each text has the width that its font gives it, and a glyph for each of its letters. */
export const textsAsMeasured: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    textsOn(page).flatMap((one) => {
      const { text, face, em, width } = one.item;
      const lacking = [...text].filter((letter) => !faceHas(face, letter));
      const wrong = Math.abs(widthByFont(face, text, em) - width) > 1e-6;
      return [
        ...lacking.map((letter) => `page ${at + 1}: ${named(one)} has no glyph for “${letter}”`),
        ...(wrong ? [`page ${at + 1}: ${named(one)} is not ${mm(width)} wide`] : []),
      ];
    }),
  );
