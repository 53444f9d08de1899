import type { Item, Page } from '../items.ts';
import { lettered, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { rectangle } from '../shapes.ts';
import type { BinderContent, BinderKit, FailedWell } from './binder.ts';
import type { BinderWell } from './binderWell.ts';
import { binderPage, bodyOf } from './page.ts';
import { sayDistrict, sayNumber, sayVillage } from './say.ts';

const look = { lettering: 'normal' } as const;
const pad = 6;

/** Paragraphs under each other, an empty line's half between them. */
function paragraphs(kit: BinderKit, texts: readonly string[], x: number, y: number, width: number) {
  let top = y;
  const items = texts.flatMap((text): Item[] => {
    const lines = wrapped(kit, text, width, look);
    const at = top;
    top += (lines.length + 0.6) * lineHeight('normal');
    return lettered(kit, lines, x, at, look);
  });
  return { items, end: top };
}

/** Stands where the papers of a well would, and says why they could not be made. */
export function layFailedPage(
  kit: BinderKit,
  content: BinderContent,
  well: BinderWell,
  { sentence }: FailedWell,
): Page {
  const { own } = kit;
  const body = bodyOf(kit);
  const [x, y, width] = [body.x + pad, body.y + 20 + pad, body.width - 2 * pad];
  const number = sayNumber(kit, well);
  const title = [number, well.name].filter((text) => text !== '').join(' – ');
  const titleLook = { lettering: 'title', face: 'bold', widest: width } as const;
  const lines = wrapped(kit, title, width, titleLook).slice(0, 4);
  const place = [sayVillage(kit, well.village), sayDistrict(kit, well.district)].join(', ');
  const top = y + lines.length * lineHeight('title') + 3;
  const says = paragraphs(kit, [place, own.failed.title, sentence, own.failed.todo], x, top, width);
  const items: Item[] = [
    ...lettered(kit, lines, x, y, titleLook),
    ...says.items,
    rectangle(
      { x: body.x, y: body.y + 20, width: body.width, height: says.end - body.y - 20 + pad - 2 },
      { stroke: solid('frame') },
    ),
  ];
  return binderPage(kit, content, number, items);
}
