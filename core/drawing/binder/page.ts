import type { PaperMm } from '../../base/units.ts';
import type { Box, Item, Page } from '../items.ts';
import { baseline, letter, lettered, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, line } from '../shapes.ts';
import type { BinderContent, BinderKit } from './binder.ts';

const headHeight: PaperMm = 7;

/** The drawing space of a page under its running head. */
export function bodyOf({ paper }: BinderKit): Box {
  const { x, y, width, height } = paper.frame;
  return { x, y: y + headHeight, width, height: height - headHeight };
}

/** What stands at the left of a running head. */
type Headed = Pick<BinderContent, 'title'>;

/** The binder's title at the left, the part's at the right, over a rule. */
function runningHead(kit: BinderKit, { title }: Headed, part: string): Item {
  const { x, y, width } = kit.paper.frame;
  const base = y + baseline('small');
  const foot = y + lineHeight('small') + 0.8;
  return group('runningHead', [
    ...letter(kit, title, x, base, { widest: width * 0.58 }),
    ...letter(kit, part, x + width, base, { anchor: 'end', face: 'bold', widest: width * 0.38 }),
    line([x, foot], [x + width, foot], solid('thin')),
  ]);
}

export function binderPage(
  kit: BinderKit,
  content: Headed,
  part: string,
  items: readonly Item[],
): Page {
  const { width, height } = kit.paper;
  return { width, height, items: [runningHead(kit, content, part), group('body', items)] };
}

/** Room that the title of a part takes at the top of its first page. */
export const partTitleHeight: PaperMm = 11;

/** The title of a part, large, at the top of a box. */
export function partTitle(kit: BinderKit, title: string, { x, y, width }: Box): Item {
  const look = { lettering: 'title', face: 'bold', widest: width } as const;
  return group('partTitle', letter(kit, title, x, y + 6, look));
}

/** A box without a strip at its top. */
export function under(box: Box, height: PaperMm): Box {
  return { ...box, y: box.y + height, height: box.height - height };
}

/** Lines of a paragraph from a height down, and where they end. */
export function paragraph(
  kit: BinderKit,
  text: string,
  { x, y, width }: Box,
  face: 'regular' | 'bold' = 'regular',
): { readonly items: readonly Item[]; readonly end: PaperMm } {
  const lines = wrapped(kit, text, width, { face });
  return {
    items: lettered(kit, lines, x, y, { face }),
    end: y + lines.length * lineHeight('small'),
  };
}
