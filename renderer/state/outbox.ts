import { diff, isSame } from '../../core/base/patch.ts';
import type { Desk, Move } from '../../core/record/desk.ts';

interface Step {
  readonly kind: Move['kind'];
  readonly before: Desk;
  readonly after: Desk;
}

const grows: readonly Move['kind'][] = ['edit', 'amend'];

/** Moves that were made on the page and are not known to be on disk, first to last. */
export class Outbox {
  #steps: Step[] = [];
  /** How many of them are under way. */
  #taken = 0;

  get isEmpty(): boolean {
    return this.#steps.length === 0;
  }

  /** The desk after all of them. */
  get last(): Desk | undefined {
    return this.#steps.at(-1)?.after;
  }

  /** Letters of one word that wait go as one move. */
  put(kind: Move['kind'], before: Desk, after: Desk) {
    const last = this.#steps.at(-1);
    const waits = this.#steps.length > this.#taken;
    if (kind === 'amend' && last && waits && grows.includes(last.kind))
      this.#steps[this.#steps.length - 1] = { ...last, after };
    else this.#steps.push({ kind, before, after });
  }

  /** All that wait, as they travel. */
  take(): Move[] {
    this.#taken = this.#steps.length;
    return this.#steps.map(({ kind, before, after }) => ({ kind, patch: diff(before, after) }));
  }

  /** What was taken did not arrive. */
  putBack() {
    this.#taken = 0;
  }

  /** What was taken arrived; gives the desk that it led to. */
  drop(): Desk | undefined {
    const arrived = this.#steps.splice(0, this.#taken).at(-1);
    this.#taken = 0;
    return arrived?.after;
  }

  /** In place of all moves: one step from a desk to another, where they differ. */
  replace(before: Desk, after: Desk) {
    this.#steps = isSame(before, after) ? [] : [{ kind: 'edit', before, after }];
    this.#taken = 0;
  }
}
