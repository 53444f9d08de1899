import type { Answer } from '../../core/contract/calls.ts';
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

/** Saves edits in their order, one call at a time, each upon the revision that the last gave. */
export function makeSaver(world: SaverWorld, start: SaverStart): Saver {
  let { revision, at } = start;
  let held = false;
  let saved: WellRecord | undefined = start.record;
  let latest = start.record;
  let since: number | undefined;
  let cancel = () => {};
  let running: Promise<void> | undefined;

  const plan = (milliseconds: number) => {
    cancel();
    cancel = world.after(milliseconds, () => void flush());
  };

  const settle = (sent: WellRecord, answer: Answer<'wells.save'>) => {
    if (answer.ok) {
      revision = answer.value.revision;
      at = answer.value.changedAt;
      saved = sent;
      if (latest === sent) world.say({ kind: 'saved', at }, revision);
      return;
    }
    const { code, sentence } = answer.error;
    world.say({ kind: 'refused', code, sentence }, revision);
    held = code === start.stale;
    if (code === start.unreachable) plan(retry);
  };

  const once = async () => {
    const sent = latest;
    since = undefined;
    world.say({ kind: 'saving' }, revision);
    const answer = await world.save(sent, revision);
    settle(sent, answer);
    return answer.ok;
  };

  const run = async () => {
    // Edits made while a save is under way go with the next one, not later.
    while (latest !== saved && !held) if (!(await once())) return;
  };

  const flush = (): Promise<void> => {
    cancel();
    running ??= run().finally(() => {
      running = undefined;
    });
    return running;
  };

  const backAtSaved = () => {
    cancel();
    since = undefined;
    world.say({ kind: 'saved', at }, revision);
  };

  return {
    changed(record) {
      if (record === latest) return;
      latest = record;
      if (running || held) return;
      if (latest === saved) return backAtSaved();
      since ??= world.now();
      world.say({ kind: 'waiting' }, revision);
      plan(Math.max(0, Math.min(quiet, since + longest - world.now())));
    },
    flush,
    rebase(newest, moment, record) {
      [revision, at, saved, held] = [newest, moment, record, false];
      if (record) latest = record;
      if (latest === saved) backAtSaved();
    },
    stop: () => cancel(),
  };
}
