import type { PaperMm } from '../../base/units.ts';
import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import type { BinderWell } from './binderWell.ts';
import { linedPages, type Line } from './linedPages.ts';
import { inOrder } from './order.ts';
import { sayDistrict, sayNumber, sayVillage, spotOf } from './say.ts';

const indent: PaperMm = 0;

/** Wells by a text that some share, each with it once over them. */
function grouped(wells: readonly BinderWell[], keyOf: (well: BinderWell) => string) {
  const found = new Map<string, BinderWell[]>();
  for (const well of wells) {
    const key = keyOf(well);
    const there = found.get(key);
    if (there) there.push(well);
    else found.set(key, [well]);
  }
  return [...found.values()];
}

const both = (...texts: readonly string[]) => texts.filter((text) => text !== '').join(', ');

/** Villages of one name in two districts stand apart. */
function villageLines(kit: BinderKit, { wells }: BinderContent, places: Places): Line[] {
  const sorted = inOrder(wells, ({ village, district, number, name }) => [
    village,
    district,
    number,
    name,
  ]);
  return grouped(sorted, ({ village, district }) => `${village}\n${district}`).flatMap((own) => {
    const { village, district } = own[0]!;
    return [
      { head: sayVillage(kit, village), more: sayDistrict(kit, district) },
      ...own.map((well): Line => {
        const says = both(sayNumber(kit, well), spotOf(well));
        return { says, page: places.pageOf(well.id), indent };
      }),
    ];
  });
}

function numberLines(kit: BinderKit, { wells }: BinderContent, places: Places): Line[] {
  return inOrder(wells, ({ number, village, name }) => [number, village, name]).map((well) => ({
    says: sayNumber(kit, well),
    more: both(sayVillage(kit, well.village), spotOf(well)),
    bold: true,
    page: places.pageOf(well.id),
  }));
}

/** The latest year first; wells of no known year at the end. */
function yearLines(kit: BinderKit, { wells }: BinderContent, places: Places): Line[] {
  const sorted = inOrder(wells, ({ number, village, name }) => [number, village, name]);
  const years = grouped(sorted, ({ year }) => String(year ?? ''));
  years.sort(([a], [b]) => (b!.year ?? -Infinity) - (a!.year ?? -Infinity));
  return years.flatMap((own) => [
    {
      head: own[0]!.year === undefined ? kit.own.noYear : String(own[0]!.year),
    },
    ...own.map((well): Line => ({
      says: sayNumber(kit, well),
      more: sayVillage(kit, well.village),
      page: places.pageOf(well.id),
      indent,
    })),
  ]);
}

const lines = { byVillage: villageLines, byNumber: numberLines, byYear: yearLines } as const;

/** An index with the page on which the papers of each well begin. */
export function layIndex(by: keyof typeof lines) {
  return (kit: BinderKit, content: BinderContent, places: Places): LaidPart =>
    linedPages(kit, content, kit.own.parts[by], places, lines[by](kit, content, places));
}
