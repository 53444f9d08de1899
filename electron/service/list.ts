import { ok, type Result } from '../../core/base/result.ts';
import type { ListOrder, ListRow, WellFilter } from '../../core/contract/listShape.ts';
import { mostMapped } from '../../core/contract/listShape.ts';
import type { Archive } from '../archive/archive.ts';
import type { SightedWell } from '../archive/tables/lists.ts';
import { findingCountBy } from './findingCounts.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { matchIn, unseenWords } from './match.ts';
import { ownGuidelineFiles } from './ownGuidelines.ts';
import { ownPracticeFiles } from './ownPractices.ts';

/** Wells that are gone through before a list is answered: those that were changed just now. */
const atOnce = 10;
/** Wells of one call that goes through them: a blink, so that other calls get their turn. */
const eachTime = 20;

const byNumber: ListOrder = { by: 'number' };

/** Goes through at most so many wells, unless too many are to be; gives how many are left. */
function goThrough(
  { lists, practices, guidelines, readOnly }: Archive,
  most: number,
  unlessOver = Infinity,
): Result<number> {
  // In an archive that cannot be written nothing more will be gone through.
  if (readOnly !== undefined) return ok(0);
  const count = findingCountBy({
    practices: ownPracticeFiles(practices),
    guidelines: ownGuidelineFiles(guidelines),
  });
  const before = lists.uncounted(count.number);
  if (!before.ok || before.value === 0 || before.value > unlessOver) return before;
  const gone = lists.goThrough(count, most);
  return gone.ok ? lists.uncounted(count.number) : gone;
}

/** Rows with where the search was found; a record is read only where no column shows that. */
function withMatches(
  { lists }: Archive,
  rows: readonly SightedWell[],
  search = '',
): Result<readonly ListRow[]> {
  const unseen = new Map<string, readonly string[]>();
  for (const { id, number, name, village, district } of rows) {
    const words = unseenWords(search, [number, name, village, district]);
    if (words.length > 0) unseen.set(id, words);
  }
  const documents = lists.documents([...unseen.keys()]);
  if (!documents.ok) return documents;
  const matches = new Map(
    [...unseen].map(([id, words], at) => [id, matchIn(documents.value[at], words)]),
  );
  return ok(
    rows.map((row) => {
      const match = matches.get(row.id);
      return match ? { ...row, match } : row;
    }),
  );
}

function mapped({ lists }: Archive, filter: WellFilter) {
  const found = lists.place(filter, mostMapped);
  if (!found.ok) return found;
  const { wells, placed, fitting } = found.value;
  return ok({
    wells,
    withoutPosition: fitting - placed,
    leftOut: placed - wells.length,
  });
}

/** Calls about many wells at once. */
export function listHandlers({ archive }: Pick<ServiceParts, 'archive'>): Handlers<'list'> {
  const { lists } = archive;
  return {
    'list.find': writes(({ filter, order = byNumber, from = 0, limit = 100 }) => {
      const uncounted = goThrough(archive, atOnce, atOnce);
      if (!uncounted.ok) return uncounted;
      const total = lists.count(filter);
      if (!total.ok) return total;
      const found = lists.find(filter, order, { from, limit, fitting: total.value });
      const rows = found.ok ? withMatches(archive, found.value, filter.search) : found;
      if (!rows.ok) return rows;
      return ok({ rows: rows.value, total: total.value, uncounted: uncounted.value });
    }),
    'list.rank': reads(({ filter, order = byNumber, id }) => {
      const at = lists.rank(filter, order, id);
      if (!at.ok) return at;
      return ok(at.value === undefined ? {} : { at: at.value });
    }),
    'list.named': reads(({ ids }) => lists.named(ids)),
    'list.map': reads(({ filter }) => mapped(archive, filter)),
    'list.choices': reads(() => lists.values()),
    'list.goThrough': writes(() => {
      const left = goThrough(archive, eachTime);
      return left.ok ? ok({ left: left.value }) : left;
    }),
  };
}
