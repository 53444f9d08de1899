import type { Places } from '../drawing/binder/binder.ts';
import type { PartId } from '../drawing/binder/partIds.ts';
import type { Folio, Plan, Shown } from './plan.ts';
import { roman } from './roman.ts';

/** Where a page of the whole binder lies: its volume and its page there, both from 1. */
export interface Spot {
  readonly volume: number;
  readonly page: number;
  readonly folio?: Folio;
}

/** The places of a plan, by pages of the whole binder counted from 1. */
export interface PlanPlaces extends Places {
  spotOf(page: number): Spot;
}

export function sayFolio({ style, number }: Folio): string {
  return style === 'roman' ? roman(number) : String(number);
}

/** What a page is looked up by; absent where nobody looks for it. */
function keyOf(shows: Shown): string | undefined {
  switch (shows.kind) {
    case 'front':
    case 'back':
      return `${shows.kind} ${shows.at}`;
    case 'divider':
      return `divider ${shows.district}`;
    case 'well':
      return shows.at === 0 ? `well ${shows.wellId}` : undefined;
    case 'cover':
    case 'blank':
      return undefined;
  }
}

/** First page of each part, as it is counted among the pages before or behind the wells. */
export type PartStarts = ReadonlyMap<
  PartId,
  { readonly kind: 'front' | 'back'; readonly at: number }
>;

/** Where everything of a plan begins. Throws on what the plan has not. */
export function placesOf({ volumes }: Plan, starts: PartStarts): PlanPlaces {
  const spots: Spot[] = [];
  const pages = new Map<string, number>();
  for (const { number, pages: own } of volumes)
    own.forEach(({ shows, folio }, at) => {
      const page = spots.push({ volume: number, page: at + 1, ...(folio && { folio }) });
      const key = keyOf(shows);
      if (key !== undefined && !pages.has(key)) pages.set(key, page);
    });
  const find = (key: string) => {
    const page = pages.get(key);
    if (page === undefined) throw new Error(`The binder has no ${key}`);
    return page;
  };
  const spotOf = (page: number) => spots[page - 1]!;
  return {
    spotOf,
    pageOf: (wellId) => find(`well ${wellId}`),
    districtAt: (district) => find(`divider ${district}`),
    partAt: (part) => {
      const start = starts.get(part);
      if (part === 'cover') return 1;
      if (!start) throw new Error(`The binder has no part ${part}`);
      return find(`${start.kind} ${start.at}`);
    },
    says: (page) => {
      const { volume, folio } = spotOf(page);
      const said = folio ? sayFolio(folio) : '';
      return volumes.length > 1 ? `${volume}/${said}` : said;
    },
  };
}
