import type { Refusal } from '../../core/base/result.ts';
import type { Answer, Gives } from '../../core/contract/calls.ts';
import type { WellRecord } from '../../core/record/schema.ts';

/** What is true of the well on disk. */
export type SaveState =
  | { readonly kind: 'saved'; readonly at: string }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'refused'; readonly code: string; readonly sentence: string };

export interface SaverWorld {
  readonly save: (record: WellRecord, revision: number) => Promise<Answer<'wells.save'>>;
  /** Runs something later; gives what takes it back. */
  readonly after: (milliseconds: number, run: () => void) => () => void;
  /** Milliseconds, only ever compared. */
  readonly now: () => number;
  readonly say: (state: SaveState, revision: number) => void;
}

/** Milliseconds of quiet after which an edit is saved. */
const quiet = 400;
/** Milliseconds after which an edit is saved although typing goes on. */
const longest = 800;
/** Milliseconds after which a save is tried again when the program did not answer. */
const retry = 3000;

export interface Saver {
  /** An edit was made. */
  changed(record: WellRecord): void;
  /** Saves now what is not saved yet; resolves when it is saved or refused. */
  flush(): Promise<void>;
  /** Goes on upon another revision; with its record, that is what is open and saved. */
  rebase(revision: number, at: string, record?: WellRecord): void;
  stop(): void;
}

export interface SaverStart {
  readonly record: WellRecord;
  readonly revision: number;
  /** When that revision was saved. */
  readonly at: string;
  /** The refusal that is tried again by itself. */
  readonly unreachable: string;
  /** The refusal that stands until somebody chose between two revisions. */
  readonly stale: string;
}

/** One open well's way to the archive: what it holds, what was typed since, what is under way. */
class OrderedSaver implements Saver {
  readonly #world: SaverWorld;
  readonly #start: SaverStart;
  #revision: number;
  #at: string;
  /** Undefined where no record at hand is the one that the archive holds. */
  #saved: WellRecord | undefined;
  #latest: WellRecord;
  /** Nothing is sent until somebody chose between two revisions. */
  #held = false;
  /** When the first edit was made that no save took along yet. */
  #since: number | undefined;
  #cancel = () => {};
  #running: Promise<void> | undefined;

  constructor(world: SaverWorld, start: SaverStart) {
    this.#world = world;
    this.#start = start;
    this.#revision = start.revision;
    this.#at = start.at;
    this.#saved = start.record;
    this.#latest = start.record;
  }

  changed(record: WellRecord) {
    if (record === this.#latest) return;
    this.#latest = record;
    if (this.#running || this.#held) return;
    if (record === this.#saved) return this.#backAtSaved();
    const now = this.#world.now();
    this.#since ??= now;
    this.#say({ kind: 'waiting' });
    this.#plan(Math.max(0, Math.min(quiet, this.#since + longest - now)));
  }

  flush(): Promise<void> {
    this.#cancel();
    this.#running ??= this.#run().finally(() => {
      this.#running = undefined;
    });
    return this.#running;
  }

  rebase(revision: number, at: string, record?: WellRecord) {
    this.#revision = revision;
    this.#at = at;
    this.#held = false;
    this.#saved = record;
    if (record) this.#latest = record;
    if (this.#latest === this.#saved) this.#backAtSaved();
  }

  stop() {
    this.#cancel();
  }

  #say(state: SaveState) {
    this.#world.say(state, this.#revision);
  }

  #plan(milliseconds: number) {
    this.#cancel();
    this.#cancel = this.#world.after(milliseconds, () => void this.flush());
  }

  #backAtSaved() {
    this.#cancel();
    this.#since = undefined;
    this.#say({ kind: 'saved', at: this.#at });
  }

  async #run() {
    // Edits made while a save is under way go with the next one, not later.
    while (this.#latest !== this.#saved && !this.#held) if (!(await this.#saveOnce())) return;
  }

  async #saveOnce(): Promise<boolean> {
    const sent = this.#latest;
    this.#since = undefined;
    this.#say({ kind: 'saving' });
    const answer = await this.#world.save(sent, this.#revision);
    if (answer.ok) this.#keep(sent, answer.value);
    else this.#refused(answer.error);
    return answer.ok;
  }

  #keep(sent: WellRecord, { revision, changedAt }: Gives<'wells.save'>) {
    this.#revision = revision;
    this.#at = changedAt;
    this.#saved = sent;
    if (this.#latest === sent) this.#say({ kind: 'saved', at: changedAt });
  }

  #refused({ code, sentence }: Refusal) {
    this.#say({ kind: 'refused', code, sentence });
    this.#held = code === this.#start.stale;
    if (code === this.#start.unreachable) this.#plan(retry);
  }
}

/** Saves edits in their order, one call at a time, each upon the revision that the last gave. */
export function makeSaver(world: SaverWorld, start: SaverStart): Saver {
  return new OrderedSaver(world, start);
}
