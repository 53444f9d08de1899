import { chainStart, linkHash } from '../chain.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';
import { putLine } from '../line.ts';
import { findRevision, putRevision, type Revision } from '../tables/revisions.ts';
import { findWell } from '../tables/wells.ts';
import { bringPapers } from './papers.ts';
import { headOf, underOurId, type MergeStep } from './plan.ts';

/**
 * What a person says of a well that went apart, or of two that are alike. Whichever record stands
 * last, all of the other's stay among the revisions. `ours`: the record here stands last; `theirs`:
 * the other archive's; `two`: of alike wells, that they are two.
 */
export const mergeChoices = ['ours', 'theirs', 'two'] as const;
export type MergeChoice = (typeof mergeChoices)[number];

/** Wells by the other archive's ids. */
export type MergeChoices = Readonly<Record<string, MergeChoice>>;

export interface MergeWorld {
  /** Now, ISO 8601. */
  readonly now: string;
  /** Who does it; empty where nobody said. */
  readonly author: string;
  /** What the other archive is called. */
  readonly name: string;
}

/** What became of the steps. */
export interface Merged {
  readonly added: number;
  readonly continued: number;
  readonly joined: number;
  /** Steps that wait for a choice, or for what is being typed. */
  readonly left: readonly MergeStep[];
}

interface Sides {
  readonly db: WriteHandle;
  readonly theirs: ReadHandle;
  readonly world: MergeWorld;
}

/** Puts revisions at the end of a well's chain here, and lists the well by the last of them. */
class Chain {
  #last: Pick<Revision, 'number' | 'hash'>;
  readonly #db: WriteHandle;
  readonly #id: string;

  constructor(db: WriteHandle, id: string) {
    [this.#db, this.#id] = [db, id];
    const well = findWell(db, id);
    this.#last = well ? findRevision(db, id, well.revision)! : { number: 0, hash: chainStart };
  }

  get length(): number {
    return this.#last.number;
  }

  /** A revision of the same chain, as it stands in the other archive. */
  continueWith(revision: Revision): void {
    this.#put(revision);
  }

  /** A record as the next revision, with what is said of it. */
  append(said: Pick<Revision, 'record' | 'changedAt' | 'author' | 'reason'>): void {
    const next = { ...said, wellId: this.#id, number: this.#last.number + 1 };
    this.#put({ ...next, hash: linkHash(this.#last.hash, next) });
  }

  #put(revision: Revision): void {
    const { number, changedAt, record } = revision;
    putLine(this.#db, JSON.parse(record), { id: this.#id, revision: number, changedAt });
    putRevision(this.#db, revision);
    this.#last = revision;
  }
}

/** What was typed in the other archive and is in none of its revisions comes as one. */
function appendTyped(chain: Chain, { theirs, world }: Sides, id: string, ourId: string): void {
  const head = headOf(theirs, findWell(theirs, id)!);
  if (!head.typed) return;
  const record = underOurId(head.record, { id, ourId });
  const reason = `typed in ${world.name}, where it was in no revision`;
  chain.append({ record, changedAt: world.now, author: world.author, reason });
}

/** The other archive's revisions from one on, first to last. */
function* revisionsFrom(theirs: ReadHandle, id: string, from: number): Generator<Revision> {
  const { revision } = findWell(theirs, id)!;
  for (let number = from; number <= revision; number += 1) yield findRevision(theirs, id, number)!;
}

function continueChain(sides: Sides, id: string): void {
  const { db, theirs } = sides;
  const chain = new Chain(db, id);
  for (const revision of revisionsFrom(theirs, id, chain.length + 1)) chain.continueWith(revision);
  appendTyped(chain, sides, id, id);
}

interface Joining {
  readonly id: string;
  readonly ourId: string;
  /** The last revision that both have. */
  readonly shared: number;
  readonly last: 'ours' | 'theirs';
}

/** Puts what the other archive has beside what is here, one after the other. */
function join(sides: Sides, { id, ourId, shared, last }: Joining): void {
  const { db, theirs, world } = sides;
  const chain = new Chain(db, ourId);
  const before = chain.length;
  const { record: ours } = findRevision(db, ourId, before)!;
  for (const revision of revisionsFrom(theirs, id, shared + 1)) {
    const { record, number, changedAt, author, reason } = revision;
    const told = `revision ${number} of ${world.name}, ${changedAt.slice(0, 10)}`;
    chain.append({
      record: underOurId(record, { id, ourId }),
      changedAt: world.now,
      author,
      reason: reason === '' ? told : `${told}: ${reason}`,
    });
  }
  appendTyped(chain, sides, id, ourId);
  if (last === 'ours')
    chain.append({
      record: ours,
      changedAt: world.now,
      author: world.author,
      reason: `revision ${before} stands, after ${world.name} was taken in`,
    });
}

/** What a step asks for, if anything is to be done by now. */
function workOf(sides: Sides, step: MergeStep, choice: MergeChoice | undefined) {
  const { id } = step;
  const asIs = () => continueChain(sides, id);
  if (step.kind === 'new') return ['added', asIs] as const;
  if (step.kind === 'later') return ['continued', asIs] as const;
  if (step.kind === 'typing' || choice === undefined) return undefined;
  if (choice === 'two') return step.kind === 'alike' ? (['added', asIs] as const) : undefined;
  const joining =
    step.kind === 'apart'
      ? { id, ourId: id, shared: step.shared }
      : { id, ourId: step.ourId, shared: 0 };
  return ['joined', () => join(sides, { ...joining, last: choice })] as const;
}

/** Does the steps of a plan that need no choice, or have one. Call it within a transaction. */
export function takeSteps(
  sides: Sides,
  steps: readonly MergeStep[],
  choices: MergeChoices,
): Merged {
  const done = { added: 0, continued: 0, joined: 0 };
  const left: MergeStep[] = [];
  for (const step of steps) {
    const work = workOf(sides, step, choices[step.id]);
    if (work) {
      const [name, run] = work;
      run();
      done[name] += 1;
    } else left.push(step);
  }
  bringPapers(sides.db, sides.theirs, sides.world.now);
  return { ...done, left };
}
