import type { StoredWell } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import { deepFreeze } from '../../core/record/freeze.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { unreachable } from '../host/pageHost.ts';
import { makeSaver, type Saver, type SaveState } from './saver.ts';

/** The archive's refusal of a save upon a revision that is no longer the newest. */
export const staleCode = 'staleRevision';

const after = (milliseconds: number, run: () => void) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
};

/** How saving of one open well goes, for the page to show. */
export class Saving {
  state = $state.raw<SaveState>({ kind: 'waiting' });
  /** What the last save found wrong in the record, as sentences. */
  troubles = $state.raw<readonly string[]>([]);
  revision = $state(0);
  /** The newest revision that the page has heard of. */
  newest = $state(0);

  readonly #host: PageHost;
  readonly #id: string;
  readonly #saver: Saver;

  constructor(host: PageHost, stored: StoredWell) {
    this.#host = host;
    this.#id = stored.id;
    this.#say({ kind: 'saved', at: stored.changedAt }, stored.revision);
    const world = {
      save: (record: WellRecord, upon: number) => this.#send(record, upon),
      after,
      now: () => performance.now(),
      say: (state: SaveState, revision: number) => this.#say(state, revision),
    };
    const { record, revision, changedAt: at } = stored;
    this.#saver = makeSaver(world, { record, revision, at, unreachable, stale: staleCode });
  }

  async #send(record: WellRecord, upon: number) {
    const answer = await this.#host.send('wells.save', { id: this.#id, revision: upon, record });
    if (answer.ok) this.troubles = answer.value.troubles.map(({ sentence }) => sentence);
    return answer;
  }

  #say(state: SaveState, revision: number) {
    this.state = state;
    this.revision = revision;
    this.heard(revision);
  }

  /** The host told of a revision, made here or in another window. */
  heard(revision: number) {
    this.newest = Math.max(this.newest, revision);
  }

  changed(record: WellRecord) {
    this.#saver.changed(record);
  }

  flush(): Promise<void> {
    return this.#saver.flush();
  }

  stop() {
    this.#saver.stop();
  }

  async #open(): Promise<StoredWell | undefined> {
    const answer = await this.#host.send('wells.open', { id: this.#id });
    if (answer.ok) return answer.value;
    this.state = { kind: 'refused', ...answer.error };
    return undefined;
  }

  /** Goes on from the newest revision, whose record comes back frozen. */
  async takeNewest(): Promise<WellRecord | undefined> {
    const stored = await this.#open();
    if (!stored) return undefined;
    const record = deepFreeze(stored.record);
    this.#saver.rebase(stored.revision, stored.changedAt, record);
    return record;
  }

  /** Saves what lies here as the revision after the newest. */
  async keepMine() {
    const stored = await this.#open();
    if (!stored) return;
    this.#saver.rebase(stored.revision, stored.changedAt);
    await this.flush();
  }
}
