import { isSame } from '../base/patch.ts';
import { sortKey } from '../base/text/sortKey.ts';
import type { WellRecord } from '../record/schema.ts';

/** What an archive has of a well that may be the one that comes in. */
export interface KnownWell {
  readonly id: string;
  /** The newest revision's document. */
  readonly document: Readonly<Record<string, unknown>>;
}

/** How a well that comes in stands to the archive. */
export type PlanKind =
  /** The archive has no such well. */
  | 'new'
  /** It is there, with all that comes in. */
  | 'same'
  /** It is there by its id, with other content. */
  | 'changed'
  /** One of its number is there, and its place does not speak against it. */
  | 'alike';

export interface WellPlan {
  readonly kind: PlanKind;
  /** Id in the archive; absent for a new one. */
  readonly id?: string;
  /** The document as it would stand. */
  readonly document: Readonly<Record<string, unknown>>;
}

const chapters = ['identity', 'site', 'bore', 'headworks'];

/**
 * What comes in, laid over what is there: a table of levels must not take the casing away. Of the
 * chapters that are groups of fields single fields come, of lists the whole list.
 */
export function laidOver(
  known: Readonly<Record<string, unknown>>,
  coming: Readonly<Record<string, unknown>>,
): Record<string, unknown> {
  const laid: Record<string, unknown> = { ...known, ...coming };
  for (const name of chapters) {
    const [there, here] = [known[name], coming[name]];
    if (there && here) laid[name] = { ...(there as object), ...(here as object) };
  }
  return laid;
}

const place = (document: Readonly<Record<string, unknown>>) =>
  (document['site'] ?? {}) as WellRecord['site'] & object;

/** Degrees that positions of one well may lie apart: about 200 m, a careless reading. */
const apart = 0.002;

/** Two places that cannot be one: positions far from each other, or villages of two names. */
function speakAgainst(
  one: Readonly<Record<string, unknown>>,
  other: Readonly<Record<string, unknown>>,
): boolean {
  const [a, b] = [place(one), place(other)];
  const far = (x?: number, y?: number) =>
    x !== undefined && y !== undefined && Math.abs(x - y) > apart;
  if (far(a.latitude, b.latitude) || far(a.longitude, b.longitude)) return true;
  const differ = (x?: string, y?: string) => x && y && sortKey(x) !== sortKey(y);
  return Boolean(differ(a.village, b.village) || differ(a.district, b.district));
}

function withId(document: Readonly<Record<string, unknown>>, id: string) {
  return { ...document, identity: { ...(document['identity'] as object | undefined), id } };
}

/** What may be known of the wells of an archive. */
export interface KnownWells {
  byId(id: string): KnownWell | undefined;
  /** All that have a number. */
  byNumber(number: string): readonly KnownWell[];
}

/**
 * Says what a well that comes in would be. `whole` is true where the file holds all of a record,
 * so that it takes the place of the one that is there instead of being laid over it.
 */
export function planWell(record: WellRecord, whole: boolean, wells: KnownWells): WellPlan {
  const coming = record as unknown as Readonly<Record<string, unknown>>;
  const { id, number } = record.identity ?? {};
  const own = id === undefined ? undefined : wells.byId(id);
  const alike = () =>
    number === undefined
      ? undefined
      : wells.byNumber(number).find(({ document }) => !speakAgainst(document, coming));
  const known = own ?? alike();
  if (!known) return { kind: 'new', document: coming };
  const laid = whole && own ? coming : laidOver(known.document, coming);
  const document = withId(laid, known.id);
  if (isSame(document, known.document)) return { kind: 'same', id: known.id, document };
  return { kind: own ? 'changed' : 'alike', id: known.id, document };
}
