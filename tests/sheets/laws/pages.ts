import type { Page } from '../../../core/drawing/items.ts';
import type { SheetWords } from '../../../core/drawing/words/words.ts';
import { groupsNamed, isText, placedOn, textsOn } from '../placed.ts';
import { numberOf, rulerOf } from '../ruler.ts';
import { mm, type Law } from './law.ts';

interface Match {
  readonly depthM: number;
  readonly way: 'on' | 'from';
  readonly sheet: number;
  /** Height of the line. */
  readonly y: number;
}

/** The match lines of a page with their words, from the top down. */
function matchesOn({ width, height, items }: Page, words: SheetWords): Match[] {
  const { matchLine, continuedOn, continuedFrom } = words;
  const said = new RegExp(`^${matchLine} (\\S+) m, (${continuedOn}|${continuedFrom}) (\\d+)$`);
  const placed = groupsNamed(items, 'matchLines').flatMap((group) =>
    placedOn({ width, height, items: group.items }),
  );
  const lines = placed.flatMap(({ item }) => (item.kind === 'path' && item.stroke ? [item] : []));
  return placed.filter(isText).map(({ item }, at) => {
    const [, depth = '', way, sheet] = said.exec(item.text)!;
    const y = lines[at]!.segments[0]![2] as number;
    return {
      depthM: numberOf(depth),
      way: way === continuedOn ? 'on' : 'from',
      sheet: Number(sheet),
      y,
    };
  });
}

/** Where a page with a ruler begins or ends in the middle of the well, it says where it goes on. */
export const pagesMeet: Law = ({ drawing, words }) => {
  const wells = drawing.pages.filter((page) => rulerOf(page));
  return wells.flatMap((page, at) => {
    const matches = matchesOn(page, words);
    const from = matches.find(({ way }) => way === 'from');
    const on = matches.find(({ way }) => way === 'on');
    const next = wells[at + 1];
    const after = next && matchesOn(next, words).find(({ way }) => way === 'from');
    const wrong = [
      !from !== (at === 0) && 'begins wrongly',
      !on !== !next && 'ends wrongly',
      from && from.sheet !== at && `comes from sheet ${from.sheet}`,
      on && on.sheet !== at + 2 && `goes on on sheet ${on.sheet}`,
      on && on.depthM !== after?.depthM && `ends at ${on.depthM}, not ${after?.depthM}`,
      from && on && from.depthM >= on.depthM && 'goes up',
    ];
    return wrong.filter((one) => one).map((one) => `page ${at + 1} ${one}`);
  });
};

/** A match line stands at the depth that its words name, to the centimetre. */
export const matchLinesAtDepth: Law = ({ drawing, words }) =>
  drawing.pages.flatMap((page, at) => {
    const ruler = rulerOf(page);
    if (!ruler) return [];
    return matchesOn(page, words)
      .filter(({ depthM, y }) => Math.abs(ruler.depthAt(y) - depthM) > 0.005 + 1e-6)
      .map(({ depthM, y }) => `page ${at + 1}: ${depthM} m at ${mm(y)}`);
  });

/** Each page says which it is of how many. */
export const pagesCounted: Law = ({ drawing, words }) =>
  drawing.pages.flatMap((page, at) => {
    const says = `${at + 1} ${words.of} ${drawing.pages.length}`;
    const found = textsOn(page).some(
      ({ item, groups }) => groups.includes('titleBlock') && item.text === says,
    );
    return found ? [] : [`page ${at + 1} does not say ${says}`];
  });
