import type { PaperMm } from '../../base/units.ts';
import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import { districtsOf } from './order.ts';
import { linedPages, type Line } from './linedPages.ts';
import type { PartId } from './partIds.ts';
import { backParts, frontParts } from './presentParts.ts';
import { counted, sayDistrict, sayVillage } from './say.ts';

const indent: PaperMm = 5;

function partLines(kit: BinderKit, ids: readonly PartId[], places: Places): Line[] {
  return ids
    .filter((id) => id !== 'cover' && id !== 'contents')
    .map((id) => ({ says: kit.own.parts[id], page: places.partAt(id) }));
}

/** Each district with its villages, and the page where the papers of each begin. */
function districtLines(kit: BinderKit, content: BinderContent, places: Places): Line[] {
  return districtsOf(content.wells).flatMap(({ name, wells }): Line[] => {
    const villages = new Map<string, number>();
    for (const { village } of wells) villages.set(village, (villages.get(village) ?? 0) + 1);
    const first = (village: string) => wells.find((well) => well.village === village)!;
    return [
      {
        says: sayDistrict(kit, name),
        more: counted(kit.own.counts.wells, wells.length),
        page: places.districtAt(name),
        bold: true,
        keeps: true,
        again: true,
      },
      ...[...villages].map(([village, n]) => ({
        says: sayVillage(kit, village),
        more: n > 1 ? counted(kit.own.counts.wells, n) : '',
        page: places.pageOf(first(village).id),
        indent,
      })),
    ];
  });
}

/** Parts, districts and villages with their pages. */
export function layContents(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { own } = kit;
  return linedPages(kit, content, own.parts.contents, places, [
    { head: own.contents.front },
    ...partLines(kit, frontParts(content), places),
    { head: own.contents.wells },
    ...districtLines(kit, content, places),
    { head: own.contents.back },
    ...partLines(kit, backParts(content), places),
  ]);
}
