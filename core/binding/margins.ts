import { filled } from '../base/text/filled.ts';
import type { PaperMm } from '../base/units.ts';
import type { BinderKit } from '../drawing/binder/binder.ts';
import { sayDistrict, sayNumber } from '../drawing/binder/say.ts';
import type { BinderWell } from '../drawing/binder/binderWell.ts';
import type { Item, Page } from '../drawing/items.ts';
import { letter } from '../drawing/letters.ts';
import { black, letterings, white } from '../drawing/pens.ts';
import { group, rectangle } from '../drawing/shapes.ts';
import { aside } from './moved.ts';
import { sayFolio } from './places.ts';
import type { Folio, Plan, PlannedVolume } from './plan.ts';
import { marginWords } from './words.ts';

/** Margins of every paper: the filing side of its frame, and the other edges (`paper.ts`). */
const filing: PaperMm = 20;
const edge: PaperMm = 10;

/** A tab keeps clear of what office printers do not reach. */
const tab = { width: 4.2, clear: 4.6, gap: 2 } as const;

/** Tabs down the edge of a page; with more districts the next begins at the top again. */
const mostTabs = 12;

/** What the margins of a page tell. */
export interface MarginFacts {
  readonly kit: BinderKit;
  readonly plan: Plan;
  readonly volume: PlannedVolume;
  /** Page of the volume, from 1: even ones lie on the back of a leaf. */
  readonly page: number;
  readonly folio?: Folio;
  readonly duplex: boolean;
  /** Nothing stands in its margins. */
  readonly plain?: boolean;
  /** Whose paper it is. */
  readonly well?: Pick<BinderWell, 'number' | 'name' | 'revision'>;
  /** Where among the districts it stands. */
  readonly section?: { readonly district: string; readonly at: number; readonly of: number };
}

function wellSays({ kit, well }: MarginFacts): string {
  if (!well) return '';
  const { noRevision, revision } = marginWords[kit.own.language];
  const { number, name, revision: n } = well;
  const revised = n === undefined ? noRevision : filled(revision, { n: String(n) });
  return [sayNumber(kit, { number }), name, revised].filter((text) => text !== '').join(' · ');
}

function pageSays({ kit, plan, volume, folio }: MarginFacts): string {
  const words = marginWords[kit.own.language];
  const page =
    folio &&
    filled(words.page, {
      n: sayFolio(folio),
      of: sayFolio({ ...folio, number: plan.counted[folio.style] }),
    });
  const { number, of } = volume;
  const bound = of > 1 ? filled(words.volume, { n: String(number), of: String(of) }) : undefined;
  return [bound, page].filter((text) => text !== undefined).join(' · ');
}

/** The line under the frame: the well and its revision, the volume and the page. */
function foot(facts: MarginFacts, page: Page, left: PaperMm, right: PaperMm): Item[] {
  const { kit } = facts;
  const base = page.height - edge + 2.2 + letterings.small;
  const said = pageSays(facts);
  const room = right - left;
  return [
    ...letter(kit, wellSays(facts), left, base, { widest: room * 0.56 }),
    ...letter(kit, said, right, base, { anchor: 'end', face: 'bold', widest: room * 0.42 }),
  ];
}

/** A black field at the outer edge with the district's name, each district's lower than the last. */
function tabOf(
  { kit, section }: MarginFacts,
  page: Page,
  outer: 'left' | 'right',
): readonly Item[] {
  if (!section) return [];
  const { district, at, of } = section;
  const slots = Math.min(of, mostTabs);
  const height = Math.min(60, (page.height - 2 * edge) / slots - tab.gap);
  const y = edge + (at % slots) * (height + tab.gap);
  const x = outer === 'right' ? page.width - tab.clear - tab.width : tab.clear;
  const name = letter(kit, sayDistrict(kit, district), x + tab.width / 2 - 0.9, y + height / 2, {
    turn: 90,
    anchor: 'middle',
    face: 'bold',
    widest: height - 2,
  });
  return [
    rectangle({ x, y, width: tab.width, height }, { fill: black }),
    ...name.map((item) => ({ ...item, ink: white })),
  ];
}

/**
 * A page as it is bound: on the back of a leaf its filing margin stands at the right, and in its
 * margins stand the well, the page and the district.
 */
export function bound(page: Page, facts: MarginFacts): Page {
  const back = facts.duplex && facts.page % 2 === 0;
  const items = aside(page.items, back ? edge - filing : 0);
  const left = back ? edge : filing;
  const right = page.width - (back ? filing : edge);
  const { width, height } = page;
  if (facts.plain) return { width, height, items };
  const margins = [
    ...foot(facts, page, left, right),
    ...tabOf(facts, page, back ? 'left' : 'right'),
  ];
  return { width, height, items: [...items, group('margins', margins)] };
}
