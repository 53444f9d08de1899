import type { BinderKit, PartMark } from '../drawing/binder/binder.ts';
import type { BinderWell } from '../drawing/binder/binderWell.ts';
import type { BoundSheet } from '../drawing/binder/boundPapers.ts';
import type { PartId } from '../drawing/binder/partIds.ts';
import { sayDistrict, sayNumber } from '../drawing/binder/say.ts';
import type { PlannedVolume } from './plan.ts';

/** A bookmark of a volume, and those under it. */
export interface Mark {
  readonly title: string;
  /** Page of the volume, from 1. */
  readonly page: number;
  readonly under: readonly Mark[];
}

/** A part of the binder: where it begins among the pages before or behind the wells. */
export interface PartStart {
  readonly part: PartId;
  readonly kind: 'front' | 'back';
  readonly at: number;
  readonly marks: readonly PartMark[];
}

/** A well and where its papers begin among its pages. */
export interface MarkedWell {
  readonly well: Pick<BinderWell, 'id' | 'number' | 'name'>;
  readonly papers: readonly { readonly kind: BoundSheet; readonly at: number }[];
}

interface Growing {
  readonly title: string;
  readonly page: number;
  readonly under: Growing[];
}

function wellMark(kit: BinderKit, { well, papers }: MarkedWell, page: number): Growing {
  const title = [sayNumber(kit, well), well.name].filter((text) => text !== '').join(' – ');
  const under =
    papers.length < 2
      ? []
      : papers.map(({ kind, at }) => ({ title: kit.own.papers[kind], page: page + at, under: [] }));
  return { title, page, under };
}

/** The bookmarks of a volume: its parts, its districts with their wells, and the wells' papers. */
export function bookmarksOf(
  kit: BinderKit,
  { pages }: PlannedVolume,
  parts: readonly PartStart[],
  wells: ReadonlyMap<string, MarkedWell>,
  districtOf: (wellId: string) => string,
): readonly Mark[] {
  const all: Growing[] = [];
  let district: { readonly name: string; readonly mark: Growing } | undefined;
  const inDistrict = (name: string, page: number) => {
    if (district?.name !== name) {
      district = { name, mark: { title: sayDistrict(kit, name), page, under: [] } };
      all.push(district.mark);
    }
    return district.mark;
  };
  const partsAt = (kind: 'front' | 'back', at: number, page: number) => {
    for (const start of parts.filter((one) => one.kind === kind)) {
      if (start.at === at) all.push({ title: kit.own.parts[start.part], page, under: [] });
      for (const { title, page: within } of start.marks)
        if (start.at + within === at) all.at(-1)?.under.push({ title, page, under: [] });
    }
  };
  pages.forEach(({ shows }, index) => {
    const page = index + 1;
    if (shows.kind === 'cover') all.push({ title: kit.own.parts.cover, page, under: [] });
    if (shows.kind === 'front' || shows.kind === 'back') partsAt(shows.kind, shows.at, page);
    if (shows.kind === 'divider') inDistrict(shows.district, page);
    if (shows.kind === 'well' && shows.at === 0)
      inDistrict(districtOf(shows.wellId), page).under.push(
        wellMark(kit, wells.get(shows.wellId)!, page),
      );
  });
  return all;
}
