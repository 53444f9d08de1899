import { chainStart, linkHash } from '../chain.ts';
import type { WriteHandle } from '../handles.ts';
import { putLine } from '../line.ts';
import { putRevision, type Revision } from '../tables/revisions.ts';

interface FoundRevision {
  readonly well_id: string;
  readonly number: number;
  readonly record: string;
  readonly changed_at: string;
  readonly hash: string;
  readonly author: string;
  readonly reason: string;
}

interface FoundWell {
  readonly id: string;
  readonly number: string;
  readonly revision: number;
  readonly binned_at: string | null;
}

/** What became of the wells. */
export interface RescuedWells {
  readonly wells: number;
  readonly revisions: number;
  /** What is lost or stands otherwise than before, well by well. */
  readonly remarks: readonly { readonly id: string; readonly sentence: string }[];
}

function documentOf(record: string): unknown {
  try {
    return JSON.parse(record) as unknown;
  } catch {
    // A part of it was written over: there is nothing to keep.
    return undefined;
  }
}

/** One well's revisions into its new chain. */
class Chain {
  readonly remarks: string[] = [];
  #last: { number: number; hash: string } = { number: 0, hash: chainStart };
  #newest: { document: unknown; changedAt: string } | undefined;
  readonly #db: WriteHandle;
  readonly #id: string;

  constructor(db: WriteHandle, id: string) {
    this.#db = db;
    this.#id = id;
  }

  get revisions(): number {
    return this.#last.number;
  }

  /** Keeps a revision as it is where it fits what stands before it, else as the next one. */
  take({ number, record, changed_at: changedAt, hash, author, reason }: FoundRevision): void {
    const document = documentOf(record);
    if (document === undefined) return;
    const kept = { changedAt, record, author, reason };
    const next = { wellId: this.#id, number: this.#last.number + 1, ...kept };
    const linked = { ...next, hash: linkHash(this.#last.hash, next) };
    if (linked.hash === hash && number === next.number) this.#put(linked);
    else this.#renumber(number, next);
    this.#newest = { document, changedAt };
  }

  #renumber(was: number, next: Omit<Revision, 'hash'>): void {
    const { number, reason } = next;
    this.remarks.push(
      `Its revision ${was} no longer fits what stood before it, and stands as revision ${number} in a new chain.`,
    );
    const told = { ...next, reason: `${reason} (rescued from revision ${was})`.trim() };
    this.#put({ ...told, hash: linkHash(this.#last.hash, told) });
  }

  #put(revision: Revision): void {
    // The line stands first: a revision belongs to it.
    if (this.#last.number === 0) this.#line(documentOf(revision.record), revision.changedAt, 1);
    putRevision(this.#db, revision);
    this.#last = { number: revision.number, hash: revision.hash };
  }

  #line(document: unknown, changedAt: string, revision: number): void {
    putLine(this.#db, document, { id: this.#id, revision, changedAt });
  }

  /** Writes the well's line by its newest record. */
  close({ revision, binned_at: binnedAt }: Partial<FoundWell>): void {
    const last = this.#newest;
    if (!last) {
      this.remarks.push('None of its revisions could be read.');
      return;
    }
    this.#line(last.document, last.changedAt, this.revisions);
    if (binnedAt)
      this.#db
        .prepare<[string, string]>('UPDATE well SET binned_at = ? WHERE id = ?')
        .run(binnedAt, this.#id);
    const lost = (revision ?? 0) - this.revisions;
    if (lost > 0) this.remarks.push(`${lost} of its ${revision} revisions could not be read.`);
  }
}

/** Makes wells of the revisions that were found, and says what is missing. */
export function chainFound(db: WriteHandle): RescuedWells {
  const ids = db
    .prepare<[], string>('SELECT well_id FROM found_revision UNION SELECT id FROM found_well')
    .pluck()
    .all();
  const revisionsOf = db.prepare<[string], FoundRevision>(
    'SELECT * FROM found_revision WHERE well_id = ? ORDER BY number',
  );
  const wellOf = db.prepare<[string], FoundWell>(
    'SELECT id, number, revision, binned_at FROM found_well WHERE id = ?',
  );
  const remarks: { id: string; sentence: string }[] = [];
  let [wells, revisions] = [0, 0];
  for (const id of ids) {
    const chain = new Chain(db, id);
    for (const found of revisionsOf.all(id)) chain.take(found);
    const well = wellOf.get(id);
    chain.close(well ?? {});
    if (chain.revisions > 0) wells += 1;
    revisions += chain.revisions;
    const called = well?.number ? `Well ${well.number}` : `Well ${id}`;
    for (const said of chain.remarks) remarks.push({ id, sentence: `${called}: ${said}` });
  }
  return { wells, revisions, remarks };
}
