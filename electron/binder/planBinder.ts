import { bookmarksOf, type MarkedWell, type PartStart } from '../../core/binding/bookmarks.ts';
import { labelsOf } from '../../core/binding/labels.ts';
import { placesOf, type PlanPlaces } from '../../core/binding/places.ts';
import { planBinder as plan, type Content, type Plan, type Unit } from '../../core/binding/plan.ts';
import {
  binderKit,
  unknownPlaces,
  type BinderContent,
  type BinderKit,
  type LaidPart,
  type Places,
} from '../../core/drawing/binder/binder.ts';
import { layCover } from '../../core/drawing/binder/cover.ts';
import { layDivider } from '../../core/drawing/binder/divider.ts';
import { layFailedPage } from '../../core/drawing/binder/failedPage.ts';
import type { IssuedPaper } from '../../core/drawing/binder/issued/issuedPaper.ts';
import { districtsOf, inBinderOrder, type District } from '../../core/drawing/binder/order.ts';
import { layParts } from '../../core/drawing/binder/parts.ts';
import type { PartId } from '../../core/drawing/binder/partIds.ts';
import { backParts, frontParts } from '../../core/drawing/binder/presentParts.ts';
import type { MapShape } from '../../core/base/geo/shapes.ts';
import type { Fonts } from '../../core/base/text/metrics.ts';
import type { Page } from '../../core/drawing/items.ts';
import { usedHatches } from '../../core/drawing/usedHatches.ts';
import type { PlannedAnswer, Work, WorkerSetup } from './messages.ts';
import { workFolder, type LaidWell, type WorkFolder } from './workFolder.ts';

type Planning = Extract<Work, { kind: 'plan' }>;

/** What the binder's own pages show besides the wells. */
interface Outside {
  readonly fonts: Fonts;
  readonly backdrop: readonly MapShape[];
  readonly issued: readonly IssuedPaper[];
}

/** A binder whose wells are laid. */
interface Gathered {
  readonly kit: BinderKit;
  readonly content: BinderContent;
  readonly laid: ReadonlyMap<string, LaidWell>;
  readonly districts: readonly District[];
  readonly front: readonly PartId[];
  readonly back: readonly PartId[];
}

function gather(
  { wish, madeAt, programVersion }: WorkerSetup,
  { wells, filterSays, archiveHash, template, issuedFolder }: Planning,
  work: WorkFolder,
  outside: Outside,
): Gathered {
  const laid = new Map(wells.map(({ id, key }) => [id, work.laid(key)] as const));
  const failed = [...laid.values()].flatMap(({ well, failed: sentence }) =>
    sentence === undefined ? [] : [{ wellId: well.id, sentence }],
  );
  const content: BinderContent = {
    title: wish.title,
    madeBy: wish.madeBy,
    madeAt,
    wells: inBinderOrder([...laid.values()].map(({ well }) => well)),
    failed,
    papers: [
      ...wish.papers.map(({ kind }) => kind),
      ...(wish.attachments ? (['attachments'] as const) : []),
    ],
    backdrop: outside.backdrop,
    sections: wish.sections,
    issued: {
      papers: outside.issued,
      ...(issuedFolder !== undefined && { folder: issuedFolder }),
    },
    filterSays,
    programVersion,
    archiveHash,
    ...(template && { template }),
  };
  const cover = (part: PartId) => part !== 'cover';
  return {
    kit: binderKit(outside.fonts, wish.language, wish.paper),
    content,
    laid,
    districts: districtsOf(content.wells),
    front: frontParts(content).filter(cover),
    back: backParts(content),
  };
}

/** Pages of parts one behind the other, and where each begins among them. */
function layAll(
  { kit, content }: Gathered,
  parts: readonly PartId[],
  kind: PartStart['kind'],
  places: Places,
): { readonly pages: readonly Page[]; readonly starts: readonly PartStart[] } {
  const pages: Page[] = [];
  const starts: PartStart[] = [];
  for (const part of parts) {
    const laid: LaidPart = layParts[part](kit, content, places);
    starts.push({ part, kind, at: pages.length, marks: laid.marks });
    pages.push(...laid.pages);
  }
  return { pages, starts };
}

/** A well's pages stand together; a page that says why stands for papers that could not be made. */
function wellUnit({ laid }: Gathered, wellId: string): Content[] {
  const pages = laid.get(wellId)!.papers.reduce((sum, paper) => sum + paper.pages, 0);
  return Array.from({ length: Math.max(1, pages) }, (_, at) => ({ kind: 'well', wellId, at }));
}

/** Pages of their own before and behind the wells; a divider stands with the well behind it. */
function unitsOf(gathered: Gathered, front: number, back: number): Unit[] {
  const own = (kind: 'front' | 'back', count: number): Unit[] =>
    Array.from({ length: count }, (_, at) => [{ kind, at }]);
  const wells = gathered.districts.flatMap(({ name, wells: inside }) =>
    inside.map(({ id }, at): Unit => {
      const pages = wellUnit(gathered, id);
      return at === 0 ? [{ kind: 'divider', district: name }, ...pages] : pages;
    }),
  );
  return [...own('front', front), ...wells, ...own('back', back)];
}

/** The binder's own pages of one volume, by their place in it from 0. */
function ownPages(
  gathered: Gathered,
  laid: { readonly front: readonly Page[]; readonly back: readonly Page[] },
  volume: Plan['volumes'][number],
  places: PlanPlaces,
): Map<number, Page> {
  const { kit, content } = gathered;
  const { width, height } = kit.paper;
  const pageOf = ({ shows }: (typeof volume.pages)[number]): Page | undefined => {
    switch (shows.kind) {
      case 'cover':
        return layCover(kit, content, volume.of > 1 ? volume : undefined).pages[0];
      case 'blank':
        return { width, height, items: [] };
      case 'front':
      case 'back':
        return laid[shows.kind][shows.at];
      case 'divider': {
        const district = gathered.districts.find(({ name }) => name === shows.district)!;
        return layDivider(kit, content, district, places);
      }
      case 'well': {
        const { well, failed: sentence } = gathered.laid.get(shows.wellId)!;
        if (sentence === undefined) return undefined;
        return layFailedPage(kit, content, well, { wellId: well.id, sentence });
      }
    }
  };
  const pages = new Map<number, Page>();
  volume.pages.forEach((planned, at) => {
    const page = pageOf(planned);
    if (page) pages.set(at, page);
  });
  return pages;
}

function markedWells({ laid }: Gathered): Map<string, MarkedWell> {
  const marked = [...laid].map(([id, { well, papers }]): [string, MarkedWell] => {
    let at = 0;
    const starts = papers.map(({ kind, pages }) => {
      const start = { kind, at };
      at += pages;
      return start;
    });
    return [id, { well, papers: starts }];
  });
  return new Map(marked);
}

/**
 * Lays the binder's own pages, once to count them and once with what they lead to; cuts the binder
 * into volumes, and writes what is needed to paint each of them.
 */
export function planBinder(
  setup: WorkerSetup,
  planning: Planning,
  outside: Outside,
): PlannedAnswer {
  const work = workFolder(setup.folder);
  const gathered = gather(setup, planning, work, outside);
  const counted = {
    front: layAll(gathered, gathered.front, 'front', unknownPlaces),
    back: layAll(gathered, gathered.back, 'back', unknownPlaces),
  };
  const units = unitsOf(gathered, counted.front.pages.length, counted.back.pages.length);
  const made = plan(units, setup.wish);
  const starts = [...counted.front.starts, ...counted.back.starts];
  const places = placesOf(made, new Map(starts.map((start) => [start.part, start])));
  const front = layAll(gathered, gathered.front, 'front', places).pages;
  const back = layAll(gathered, gathered.back, 'back', places).pages;
  const keys = new Map(planning.wells.map(({ id, key }) => [id, key]));
  const marked = markedWells(gathered);
  const districtOf = (id: string) => gathered.laid.get(id)!.well.district;
  for (const volume of made.volumes) {
    const pages = ownPages(gathered, { front, back }, volume, places);
    work.putParts(volume.number, {
      pages,
      hatches: usedHatches([...pages.values()]),
      bookmarks: bookmarksOf(gathered.kit, volume, starts, marked, districtOf),
      labels: labelsOf(volume, gathered.kit.own.parts.cover),
    });
  }
  work.putPlan({
    plan: made,
    districts: gathered.districts.map(({ name }) => name),
    wells: new Map(
      gathered.content.wells.map((well) => [well.id, { key: keys.get(well.id)!, well }]),
    ),
  });
  return {
    volumes: made.volumes.map(({ pages }) => pages.length),
    failed: gathered.content.failed.map(({ wellId, sentence }) => ({
      number: gathered.laid.get(wellId)!.well.number,
      sentence,
    })),
  };
}
