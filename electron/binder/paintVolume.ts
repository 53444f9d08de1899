import { bound } from '../../core/binding/margins.ts';
import { led } from '../../core/binding/moved.ts';
import { placesOf } from '../../core/binding/places.ts';
import { binderKit } from '../../core/drawing/binder/binder.ts';
import type { HatchTile, Page } from '../../core/drawing/items.ts';
import { openBook } from '../../core/paint/pdf/book.ts';
import { deflate } from '../files/deflate.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { sha256Hex } from '../seal/hash.ts';
import type { WorkerSetup } from './messages.ts';
import { workFolder, type LaidPaper, type PlannedBinder, type WorkFolder } from './workFolder.ts';

/** A page, and how its links are to be read: by pages of its paper, or of the whole binder. */
interface FoundPage {
  readonly page: Page;
  readonly hatches: Readonly<Record<string, HatchTile>>;
  /** Page of the paper's first page in its volume, from 1; absent of the binder's own pages. */
  readonly paperAt?: number;
}

/** Finds pages of wells, whose files are read one after the other. */
function wellPages(work: WorkFolder) {
  let open: { readonly key: string; readonly papers: readonly LaidPaper[] } | undefined;
  return (key: string, at: number, page: number): FoundPage => {
    if (open?.key !== key) open = { key, papers: work.papers(key) };
    let before = 0;
    for (const { pages, hatches } of open.papers) {
      const found = pages[at - before];
      if (found) return { page: found, hatches, paperAt: page - (at - before) };
      before += pages.length;
    }
    throw new Error(`A well has no page ${at + 1} among its papers`);
  };
}

/** Names one volume of one binder: 32 hexadecimal digits. */
function paperIdOf({ wish, madeAt }: WorkerSetup, volume: number, wells: readonly string[]) {
  return sha256Hex(JSON.stringify(['binder', wish, madeAt, volume, wells])).slice(0, 32);
}

/** What all volumes of a binder are painted with. */
export interface PaintingParts {
  readonly setup: WorkerSetup;
  readonly planned: PlannedBinder;
  readonly fonts: ShippedFonts;
}

/** The PDF of one volume. `onPage` is told how many pages are painted. */
export function paintVolume(
  { setup, planned, fonts }: PaintingParts,
  number: number,
  onPage: (pages: number) => void,
): Uint8Array {
  const { wish, madeAt } = setup;
  const work = workFolder(setup.folder);
  const { plan, districts, wells } = planned;
  const own = work.parts(number);
  const volume = plan.volumes[number - 1]!;
  const kit = binderKit(fonts.metrics, wish.language, wish.paper);
  const { spotOf } = placesOf(plan, new Map());
  const pageHere = (page: number) => {
    const spot = spotOf(page);
    return spot.volume === number ? spot.page : undefined;
  };
  const find = wellPages(work);
  const keys = [...wells.values()].map(({ key }) => key);
  const book = openBook(
    {
      title: wish.title,
      subject: '',
      author: wish.madeBy,
      language: wish.language,
      madeAt,
      paperId: paperIdOf(setup, number, keys),
    },
    { fontFiles: fonts.files, deflate },
  );
  volume.pages.forEach(({ shows, folio }, at) => {
    const listed = shows.kind === 'well' ? wells.get(shows.wellId) : undefined;
    const ownPage = own.pages.get(at);
    const found: FoundPage = ownPage
      ? { page: ownPage, hatches: own.hatches }
      : find(listed!.key, shows.kind === 'well' ? shows.at : 0, at + 1);
    const { page, hatches, paperAt } = found;
    const toPage = paperAt === undefined ? pageHere : (link: number) => paperAt + link - 1;
    const district = shows.kind === 'divider' ? shows.district : listed?.well.district;
    const leading = { ...page, items: led(page.items, toPage) };
    const plain = shows.kind === 'cover' || shows.kind === 'blank';
    const section = { at: districts.indexOf(district ?? ''), of: districts.length };
    const facts = { kit, plan, volume, page: at + 1, duplex: wish.duplex, plain };
    book.add(
      bound(leading, {
        ...facts,
        ...(folio && { folio }),
        ...(listed && { well: listed.well }),
        ...(district !== undefined && { section: { ...section, district } }),
      }),
      hatches,
    );
    onPage(at + 1);
  });
  return book.bytes({ bookmarks: own.bookmarks, labels: own.labels });
}
