import type { Volume } from '../drawing/binder/binder.ts';

/** A page that the binder has, before it has its place. */
export type Content =
  | { readonly kind: 'front'; readonly at: number }
  | { readonly kind: 'divider'; readonly district: string }
  | { readonly kind: 'well'; readonly wellId: string; readonly at: number }
  | { readonly kind: 'back'; readonly at: number };

/** What a page of the binder shows: a cover, one of the pages given, or nothing. */
export type Shown = Content | { readonly kind: 'cover' } | { readonly kind: 'blank' };

/** Pages that are not torn apart where a binder is cut into volumes. */
export type Unit = readonly Content[];

/** How pages are counted: those before the wells in roman numbers, all others in arabic ones. */
export interface Folio {
  readonly style: 'roman' | 'arabic';
  /** From 1. */
  readonly number: number;
}

export interface PlannedPage {
  readonly shows: Shown;
  /** Absent of the covers of later volumes and of blank pages behind them. */
  readonly folio?: Folio;
}

export interface PlannedVolume extends Volume {
  readonly pages: readonly PlannedPage[];
}

export interface Plan {
  readonly volumes: readonly PlannedVolume[];
  /** How many pages are counted in each way. */
  readonly counted: Readonly<Record<Folio['style'], number>>;
}

export interface PlanOptions {
  /** Of one volume, its cover and blank pages apart. A unit that is longer stands alone in one. */
  readonly mostPages: number;
  /** Printed on both sides: what has an odd number stands on the right, blank pages see to it. */
  readonly duplex: boolean;
}

/** Puts units into as many parcels as are needed, none longer than it must be. */
function parcels(units: readonly Unit[], most: number): Unit[][] {
  const found: Unit[][] = [];
  let room = 0;
  for (const unit of units) {
    const last = found.at(-1);
    if (last && unit.length <= room) {
      last.push(unit);
      room -= unit.length;
    } else {
      found.push([unit]);
      room = most - unit.length;
    }
  }
  return found;
}

/** The fewest volumes that do, and among those the least long ones, so that all are alike thick. */
function evenParcels(units: readonly Unit[], most: number): Unit[][] {
  const fewest = parcels(units, most).length;
  const pages = units.reduce((sum, unit) => sum + unit.length, 0);
  let [low, high] = [Math.max(1, Math.ceil(pages / Math.max(1, fewest))), most];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (parcels(units, middle).length <= fewest) high = middle;
    else low = middle + 1;
  }
  return parcels(units, Math.max(low, 1));
}

/** Gives pages their numbers, volume by volume. */
class Numbering {
  readonly counted = { roman: 0, arabic: 0 };

  next(style: Folio['style']): Folio {
    this.counted[style] += 1;
    return { style, number: this.counted[style] };
  }
}

const styleOf = ({ kind }: Content): Folio['style'] => (kind === 'front' ? 'roman' : 'arabic');

/** Whether a number would come to stand on the wrong side of the leaf behind so many pages. */
const offSide = (next: number, pagesBefore: number) => (next - 1 - pagesBefore) % 2 !== 0;

function pagesOf(
  contents: readonly Content[],
  numbering: Numbering,
  duplex: boolean,
  isFirst: boolean,
): PlannedPage[] {
  const cover: PlannedPage = { shows: { kind: 'cover' } };
  const pages: PlannedPage[] = [isFirst ? { ...cover, folio: numbering.next('roman') } : cover];
  for (const shows of contents) {
    const style = styleOf(shows);
    if (duplex && offSide(numbering.counted[style] + 1, pages.length)) {
      const inFront = isFirst && numbering.counted.arabic === 0;
      const blank: PlannedPage = { shows: { kind: 'blank' } };
      pages.push(inFront ? { ...blank, folio: numbering.next('roman') } : blank);
    }
    pages.push({ shows, folio: numbering.next(style) });
  }
  return pages;
}

/** First and last page of a volume as they are numbered on paper. */
function endsOf(pages: readonly PlannedPage[]): { fromPage: number; toPage: number } {
  const numbers = pages.flatMap(({ folio }) => (folio?.style === 'arabic' ? [folio.number] : []));
  return { fromPage: numbers[0] ?? 1, toPage: numbers.at(-1) ?? 1 };
}

/** Cuts a binder into volumes and gives every page its number. */
export function planBinder(units: readonly Unit[], { mostPages, duplex }: PlanOptions): Plan {
  const numbering = new Numbering();
  const cut = evenParcels(units, Math.max(1, mostPages));
  const volumes = cut.map((parcel, at): PlannedVolume => {
    const pages = pagesOf(parcel.flat(), numbering, duplex, at === 0);
    return { number: at + 1, of: cut.length, ...endsOf(pages), pages };
  });
  return { volumes, counted: numbering.counted };
}
