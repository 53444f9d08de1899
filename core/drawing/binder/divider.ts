import type { PaperMm } from '../../base/units.ts';
import type { Item, Page } from '../items.ts';
import { lettered, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, line } from '../shapes.ts';
import type { BinderContent, BinderKit, Places } from './binder.ts';
import { binderPage, bodyOf } from './page.ts';
import type { District } from './order.ts';
import { counted, distinct, sayDistrict, sayVillage } from './say.ts';
import { linesInColumns, type Line } from './linedPages.ts';

const mostTitleLines = 3;
const titleTop: PaperMm = 14;

/** The title of the page over a wide rule; gives where it ends. */
function drawTitle(kit: BinderKit, title: string, wells: string) {
  const { x, y, width } = bodyOf(kit);
  const look = { lettering: 'number', face: 'bold', widest: width } as const;
  const all = wrapped(kit, title, width, look);
  const lines =
    all.length <= mostTitleLines
      ? all
      : [...all.slice(0, mostTitleLines - 1), `${all[mostTitleLines - 1]}…`];
  const foot = y + titleTop + lines.length * lineHeight('number');
  const items: Item[] = [
    ...lettered(kit, lines, x, y + titleTop, look),
    ...lettered(kit, [wells], x, foot + 2, { lettering: 'large', widest: width }),
    line([x, foot + 12], [x + width, foot + 12], solid('frame')),
  ];
  return { items, end: foot + 16 };
}

/** Villages of a district, or its wells where they stand on the page. */
function linesOf(kit: BinderKit, { wells }: District, places: Places): Line[] {
  const villages = distinct(wells.map(({ village }) => village));
  const names = wells.some(({ village }) => village === '') ? [...villages, ''] : villages;
  return names.map((village) => {
    const own = wells.filter((well) => well.village === village);
    return {
      says: sayVillage(kit, village),
      more: counted(kit.own.counts.wells, own.length),
      page: places.pageOf(own[0]!.id),
    };
  });
}

/** The page before the wells of a district: its name, and as many of its villages as stand on it. */
export function layDivider(
  kit: BinderKit,
  content: BinderContent,
  district: District,
  places: Places,
): Page {
  const title = sayDistrict(kit, district.name);
  const head = drawTitle(kit, title, counted(kit.own.counts.wells, district.wells.length));
  const body = bodyOf(kit);
  const box = { ...body, y: head.end, height: body.y + body.height - head.end };
  const lines = linesOf(kit, district, places);
  const [first = []] = linesInColumns(kit, lines, places, box);
  return binderPage(kit, content, title, [group('divider', [...head.items, ...first])]);
}
