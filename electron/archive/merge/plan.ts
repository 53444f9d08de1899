import { valueAt } from '../../../core/base/recordPath.ts';
import type { ReadHandle } from '../handles.ts';
import { sortKey } from '../../../core/base/text/sortKey.ts';
import { findRevision } from '../tables/revisions.ts';
import { findWell, idsNumbered, type ListedWell } from '../tables/wells.ts';
import { findWorking } from '../tables/working.ts';

/** A well of the other archive beside this one. */
export type MergeStep =
  /** This archive has no such well. */
  | { readonly kind: 'new'; readonly id: string }
  /** The other one has later revisions of the same chain. */
  | { readonly kind: 'later'; readonly id: string }
  /** Both went on from a revision that they share; `shared` is 0 where they share none. */
  | { readonly kind: 'apart'; readonly id: string; readonly shared: number }
  /** Another id, and the same number and place: perhaps the same well. */
  | { readonly kind: 'alike'; readonly id: string; readonly ourId: string }
  /** Something typed here is in no revision, so that nothing is put before it. */
  | { readonly kind: 'typing'; readonly id: string };

export interface MergePlan {
  /** In the other archive's order. */
  readonly steps: readonly MergeStep[];
  /** Wells of which this archive has all that the other one has. */
  readonly known: number;
  /** Wells that lie in the other archive's bin, and stay there. */
  readonly binned: number;
}

/** The newest record that the other archive has of a well, as it would stand in this one. */
export interface OtherHead {
  readonly well: ListedWell;
  /** JSON. */
  readonly record: string;
  /** It was typed, and is in none of its revisions. */
  readonly typed: boolean;
}

/** A record's JSON under another id. */
function underId(record: string, id: string): string {
  const document = JSON.parse(record) as Record<string, unknown>;
  const identity = valueAt(document, 'identity');
  return JSON.stringify({ ...document, identity: { ...(identity as object | undefined), id } });
}

/** A record of the other archive as it would stand here. */
export function underOurId(
  record: string,
  { id, ourId }: { readonly id: string; readonly ourId: string },
): string {
  return id === ourId ? record : underId(record, ourId);
}

export function headOf(theirs: ReadHandle, well: ListedWell): OtherHead {
  const working = well.unrevised ? findWorking(theirs, well.id) : undefined;
  if (working) return { well, record: JSON.stringify(working.desk.record), typed: true };
  const { record } = findRevision(theirs, well.id, well.revision)!;
  return { well, record, typed: false };
}

/** The last revision here that is that very record. */
export function revisionWith(ours: ReadHandle, id: string, record: string): number | undefined {
  return ours
    .prepare<[string, string], number>(
      'SELECT number FROM revision WHERE well_id = ? AND record = ? ORDER BY number DESC LIMIT 1',
    )
    .pluck()
    .get(id, record);
}

/** Number of the last revision that both chains have, from their beginning. */
function lastShared(ours: ReadHandle, theirs: ReadHandle, id: string, most: number): number {
  let [low, high] = [0, most];
  // A hash covers all before it: where two are alike, so is everything up to there.
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    const same = findRevision(ours, id, middle)?.hash === findRevision(theirs, id, middle)?.hash;
    [low, high] = same ? [middle, high] : [low, middle - 1];
  }
  return low;
}

function stepOfKnown(
  ours: ReadHandle,
  theirs: ReadHandle,
  our: ListedWell,
  head: OtherHead,
): MergeStep | undefined {
  const { id, revision } = head.well;
  if (revisionWith(ours, id, head.record) !== undefined) return undefined;
  const shared = lastShared(ours, theirs, id, Math.min(our.revision, revision));
  if (shared === revision && !head.typed) return undefined;
  if (our.unrevised) return { kind: 'typing', id };
  return shared === our.revision ? { kind: 'later', id } : { kind: 'apart', id, shared };
}

/** Places agree where neither says something else. */
function agree(one: string, other: string): boolean {
  const [a, b] = [sortKey(one), sortKey(other)];
  return a === '' || b === '' || a === b;
}

function alikeHere(ours: ReadHandle, { number, village, district }: ListedWell) {
  if (number.trim() === '') return undefined;
  const wells = idsNumbered(ours, number).map((id) => findWell(ours, id)!);
  return wells.find((our) => agree(our.village, village) && agree(our.district, district));
}

/** The well here that one of the other archive is, or may be. */
export function idHere(ours: ReadHandle, well: ListedWell): string | undefined {
  return (findWell(ours, well.id) ?? alikeHere(ours, well))?.id;
}

/** What is to be done with a well of the other archive; nothing where it is known. */
export function stepOf(
  ours: ReadHandle,
  theirs: ReadHandle,
  well: ListedWell,
): MergeStep | undefined {
  const head = headOf(theirs, well);
  const our = findWell(ours, well.id);
  if (our) return stepOfKnown(ours, theirs, our, head);
  const alike = alikeHere(ours, well);
  if (!alike) return { kind: 'new', id: well.id };
  const record = underId(head.record, alike.id);
  if (revisionWith(ours, alike.id, record) !== undefined) return undefined;
  if (alike.unrevised) return { kind: 'typing', id: well.id };
  return { kind: 'alike', id: well.id, ourId: alike.id };
}

function idsOf(theirs: ReadHandle, where: string): string[] {
  return theirs
    .prepare<[], string>(`SELECT id FROM well WHERE ${where} ORDER BY seq`)
    .pluck()
    .all();
}

/** What would come of the other archive. Changes nothing. */
export function planMerge(ours: ReadHandle, theirs: ReadHandle): MergePlan {
  const steps: MergeStep[] = [];
  let known = 0;
  for (const id of idsOf(theirs, 'binned_at IS NULL')) {
    const step = stepOf(ours, theirs, findWell(theirs, id)!);
    if (step) steps.push(step);
    else known += 1;
  }
  return { steps, known, binned: idsOf(theirs, 'binned_at IS NOT NULL').length };
}
