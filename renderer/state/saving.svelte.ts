import type { Answer, Desk, Move, OpenedWell, Trouble } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import { unreachable } from '../host/pageHost.ts';
import type { Choice } from './merge.ts';
import { Saver, type Mark, type SaverWorld, type SaveState } from './saver.ts';

const after = (milliseconds: number, run: () => void) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
};

/** How saving of one open well goes, for the page to show. */
export class Saving {
  state = $state.raw<SaveState>({ kind: 'waiting' });
  /** What the last call found wrong in the record. */
  troubles = $state.raw<readonly Trouble[]>([]);
  /** The newest revision. */
  revision = $state(0);
  /** Something is on disk that is in no revision yet. */
  unrevised = $state(false);
  /** Why the next revision is made, as far as the person says; stays until there is one. */
  reason = $state('');

  readonly #host: PageHost;
  readonly #id: string;
  readonly #saver: Saver;
  #edit = 0;

  /** `lay` puts a desk down in which another window's work was taken in. */
  constructor(host: PageHost, well: OpenedWell, desk: Desk, lay: SaverWorld['lay']) {
    this.#host = host;
    this.#id = well.id;
    const { edit, unrevised, changedAt } = well.working;
    const mark = { edit, unrevised, changedAt, revision: well.revision };
    const start = { desk, mark, revisedAt: well.changedAt, unreachable, stale: 'staleEdit' };
    this.#saver = new Saver({ ...this.#calls(), lay, after, ...this.#page() }, start);
  }

  #calls(): Pick<SaverWorld, 'edit' | 'save' | 'desk'> {
    const [host, id] = [this.#host, this.#id];
    return {
      edit: async (upon, moves) => this.#judged(await host.send('wells.edit', { id, upon, moves })),
      save: async (upon) => this.#judged(await this.#send(upon)),
      desk: () => host.send('wells.desk', { id }),
    };
  }

  /** Asks for a revision, with the reason that was typed. */
  async #send(upon: number): Promise<Answer<'wells.save'>> {
    const reason = this.reason.trim();
    const said = reason === '' ? {} : { reason };
    const answer = await this.#host.send('wells.save', { id: this.#id, upon, ...said });
    const made = answer.ok && answer.value.revision > this.revision;
    if (made && this.reason.trim() === reason) this.reason = '';
    return answer;
  }

  #page(): Pick<SaverWorld, 'now' | 'say'> {
    return {
      now: () => performance.now(),
      say: (state, { revision, unrevised, edit }) => {
        this.state = state;
        this.revision = revision;
        this.unrevised = unrevised;
        this.#edit = edit;
      },
    };
  }

  #judged<A extends { ok: boolean; value?: { troubles: readonly Trouble[] } }>(answer: A): A {
    if (answer.value) this.troubles = answer.value.troubles;
    return answer;
  }

  /** The revision that lies open; undefined while the record is not what that revision holds. */
  get shownRevision(): number | undefined {
    return this.isKept && !this.unrevised ? this.revision : undefined;
  }

  /** All that was typed is on disk. */
  get isKept(): boolean {
    return this.state.kind === 'kept';
  }

  /** The host told how far the well is, by this window's doing or another's. */
  heard(mark: Mark) {
    this.#saver.heard(mark);
  }

  moved(kind: Move['kind'], before: Desk, after: Desk) {
    this.#saver.moved(kind, before, after);
  }

  /** Puts on disk now what is not there yet. */
  flush(): Promise<void> {
    return this.#saver.flush();
  }

  /** The same, and makes a revision of it. */
  revise(): Promise<void> {
    return this.#saver.revise();
  }

  /** The same, and lets the next opening start from there. Gives whether it was done. */
  async leave(): Promise<boolean> {
    await this.revise();
    if (!this.isKept) return false;
    if (this.#edit > 0) await this.#host.send('wells.leave', { id: this.#id, upon: this.#edit });
    return true;
  }

  /** Says whose work stands where two windows changed the same place. */
  choose(choice: Choice): Promise<void> {
    return this.#saver.choose(choice);
  }

  stop() {
    this.#saver.stop();
  }
}
