import { isSame } from '../../core/base/patch.ts';
import type { Refusal } from '../../core/base/result.ts';
import type { Answer, Desk, Gives, Move, WorkState } from '../../core/contract/calls.ts';
import { merge, type Choice } from './merge.ts';
import { Outbox } from './outbox.ts';

/** What is true of the well on disk. */
export type SaveState =
  /** All of it is there; `revised` when nothing was typed since the revision. */
  | { readonly kind: 'kept'; readonly at: string; readonly revised: boolean }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'saving' }
  /** Another window changed the same place: nothing is sent until somebody chose. */
  | { readonly kind: 'parted' }
  | { readonly kind: 'refused'; readonly code: string; readonly sentence: string };

/** How far the well is on disk. */
export interface Mark extends WorkState {
  readonly revision: number;
}

export interface SaverWorld {
  readonly edit: (upon: number, moves: readonly Move[]) => Promise<Answer<'wells.edit'>>;
  readonly save: (upon: number) => Promise<Answer<'wells.save'>>;
  readonly desk: () => Promise<Answer<'wells.desk'>>;
  /** Lays another desk down, which is the present one with another window's work in it. */
  readonly lay: (desk: Desk) => void;
  /** Runs something later; gives what takes it back. */
  readonly after: (milliseconds: number, run: () => void) => () => void;
  /** Milliseconds, only ever compared. */
  readonly now: () => number;
  readonly say: (state: SaveState, mark: Mark) => void;
}

export interface SaverStart {
  readonly desk: Desk;
  readonly mark: Mark;
  /** When the revision was saved. */
  readonly revisedAt: string;
  /** The refusal that is tried again by itself. */
  readonly unreachable: string;
  /** The refusal of what was made upon an edit that is no longer the newest. */
  readonly stale: string;
}

/** Milliseconds of quiet after which an edit is sent. */
const quiet = 400;
/** Milliseconds after which an edit is sent although typing goes on. */
const longest = 800;
/** Milliseconds after which it is tried again when the program did not answer. */
const retry = 3000;

/**
 * One open well's way to the archive: sends moves in their order, one call at a time, each upon
 * the edit that the last gave, and takes in what other windows edited.
 */
export class Saver {
  readonly #world: SaverWorld;
  readonly #start: SaverStart;
  /** The desk that is on disk. */
  #kept: Desk;
  #mark: Mark;
  #revisedAt: string;
  /** Edits came after the revision, be it that they led back to it. */
  #beyond: boolean;
  readonly #outbox = new Outbox();
  /** The newest edit that was told of. */
  #heard: number;
  #wantsRevision = false;
  #parted = false;
  #choice: Choice | undefined;
  /** When the first move was made that is not under way yet. */
  #since: number | undefined;
  #cancel = () => {};
  #busy = false;
  #running = Promise.resolve();

  constructor(world: SaverWorld, start: SaverStart) {
    this.#world = world;
    this.#start = start;
    this.#kept = start.desk;
    this.#mark = start.mark;
    this.#heard = start.mark.edit;
    this.#revisedAt = start.revisedAt;
    this.#beyond = start.mark.unrevised;
    this.#sayKept();
  }

  /** A move was made on the page. */
  moved(kind: Move['kind'], before: Desk, after: Desk) {
    this.#outbox.put(kind, before, after);
    if (this.#busy || this.#parted) return;
    const now = this.#world.now();
    this.#since ??= now;
    this.#say({ kind: 'waiting' });
    this.#plan(Math.max(0, Math.min(quiet, this.#since + longest - now)));
  }

  /** Sends now what is not on disk yet; resolves when it is, or when that is refused. */
  flush(): Promise<void> {
    this.#cancel();
    if (!this.#busy && !this.#parted) {
      this.#busy = true;
      this.#running = this.#run();
    }
    return this.#running;
  }

  /** The same, and makes a revision of it where there is something to make one of. */
  revise(): Promise<void> {
    this.#wantsRevision = true;
    return this.flush();
  }

  /** The host told how far the well is: by this window's doing, or another's. */
  heard(mark: Mark) {
    if (mark.edit > this.#mark.edit) {
      this.#heard = Math.max(this.#heard, mark.edit);
      void this.flush();
    } else if (mark.edit === this.#mark.edit && mark.revision > this.#mark.revision) {
      this.#revised(mark.revision, mark.changedAt);
      if (!this.#busy && this.#outbox.isEmpty) this.#sayKept();
    }
  }

  /** Says whose work stands where two windows changed the same place; all the rest is kept. */
  choose(choice: Choice): Promise<void> {
    this.#parted = false;
    this.#choice = choice;
    return this.flush();
  }

  stop() {
    this.#cancel();
  }

  #say(state: SaveState) {
    this.#world.say(state, this.#mark);
  }

  #sayKept() {
    const revised = !this.#beyond;
    this.#say({ kind: 'kept', at: revised ? this.#revisedAt : this.#mark.changedAt, revised });
  }

  #plan(milliseconds: number) {
    this.#cancel();
    this.#cancel = this.#world.after(milliseconds, () => void this.flush());
  }

  async #run() {
    try {
      // What comes meanwhile goes with the next call, not later.
      while (await this.#next());
    } finally {
      this.#busy = false;
    }
  }

  /** Does what is most needed now; gives whether to go on. */
  #next(): Promise<boolean> | boolean {
    if (this.#choice !== undefined || this.#heard > this.#mark.edit) return this.#takeIn();
    if (!this.#outbox.isEmpty) return this.#send();
    if (this.#wantsRevision) return this.#revise();
    this.#sayKept();
    return false;
  }

  async #send(): Promise<boolean> {
    this.#since = undefined;
    this.#say({ kind: 'saving' });
    const moves = this.#outbox.take();
    const answer = await this.#world.edit(this.#mark.edit, moves);
    if (!answer.ok) {
      this.#outbox.putBack();
      return this.#refused(answer.error);
    }
    this.#kept = this.#outbox.drop() ?? this.#kept;
    this.#beyond = true;
    this.#reach(answer.value);
    return true;
  }

  #reach({ edit, unrevised, changedAt }: WorkState, revision = this.#mark.revision) {
    this.#mark = { edit, unrevised, changedAt, revision };
    this.#heard = Math.max(this.#heard, edit);
  }

  async #revise(): Promise<boolean> {
    this.#wantsRevision = false;
    const { unrevised, edit } = this.#mark;
    if (!unrevised) {
      this.#beyond = false;
      return true;
    }
    this.#say({ kind: 'saving' });
    const answer = await this.#world.save(edit);
    if (answer.ok) this.#revised(answer.value.revision, answer.value.changedAt);
    else this.#wantsRevision = answer.error.code === this.#start.stale;
    return answer.ok || this.#refused(answer.error);
  }

  #revised(revision: number, at: string) {
    this.#mark = { ...this.#mark, revision, unrevised: false };
    this.#revisedAt = at;
    this.#beyond = false;
  }

  /** Another window's work comes in; where it meets what is not on disk yet, somebody chooses. */
  async #takeIn(): Promise<boolean> {
    const answer = await this.#world.desk();
    if (!answer.ok) return this.#refused(answer.error);
    const { desk: theirs } = answer.value;
    const mine = this.#outbox.last ?? this.#kept;
    const merged = merge(this.#kept, mine, theirs, this.#choice);
    this.#choice = undefined;
    if (merged) this.#settleOn(merged, mine, answer.value);
    else {
      this.#parted = true;
      this.#say({ kind: 'parted' });
    }
    return merged !== undefined;
  }

  #settleOn(merged: Desk, mine: Desk, theirs: Gives<'wells.desk'>) {
    const laid = isSame(mine, merged) ? mine : merged;
    if (theirs.revision !== this.#mark.revision) this.#revisedAt = theirs.changedAt;
    this.#kept = theirs.desk;
    this.#reach(theirs, theirs.revision);
    this.#heard = theirs.edit;
    this.#beyond = theirs.unrevised;
    this.#outbox.replace(theirs.desk, laid);
    if (laid !== mine) this.#world.lay(laid);
  }

  /** Gives whether to go on: with a newer edit there is something to take in first. */
  #refused({ code, sentence }: Refusal): boolean {
    if (code === this.#start.stale) {
      this.#heard = Math.max(this.#heard, this.#mark.edit + 1);
      return true;
    }
    this.#say({ kind: 'refused', code, sentence });
    if (code === this.#start.unreachable) this.#plan(retry);
    return false;
  }
}
