import { beforeEach, describe, expect, it } from 'vitest';
import type { Answer, Desk, Move } from '../../../core/contract/calls.ts';
import { Saver, type Mark, type SaveState } from '../../../renderer/state/saver.ts';

const deskOf = (notes: string, village = ''): Desk => ({
  record: { schemaVersion: 1, notes, site: { village } },
  typed: {},
});
const first = deskOf('first');
const start: Mark = { edit: 4, revision: 2, unrevised: false, changedAt: 'then' };
const refusedAs = (code: string) => ({ ok: false, error: { code, sentence: code } }) as const;

interface Asked {
  readonly name: 'edit' | 'save' | 'desk';
  readonly upon?: number;
  readonly moves?: readonly Move[];
  readonly answer: (answer: never) => void;
}

/** A clock that stands until it is moved, and an archive that answers when it is told to. */
class Bench {
  time = 0;
  timers: { at: number; run: () => void }[] = [];
  calls: Asked[] = [];
  states: SaveState[] = [];
  marks: Mark[] = [];
  laid: Desk[] = [];
  present = first;
  readonly saver: Saver;

  constructor(mark: Partial<Mark> = {}) {
    const ask =
      (name: Asked['name']) =>
      (upon?: number, moves?: readonly Move[]): Promise<never> =>
        new Promise((answer) =>
          this.calls.push({ name, upon: upon ?? 0, moves: moves ?? [], answer }),
        );
    const world = {
      edit: ask('edit'),
      save: ask('save'),
      desk: ask('desk'),
      lay: (desk: Desk) => {
        this.laid.push(desk);
        this.present = desk;
      },
      after: (milliseconds: number, run: () => void) => {
        const timer = { at: this.time + milliseconds, run };
        this.timers.push(timer);
        return () => void (this.timers = this.timers.filter((one) => one !== timer));
      },
      now: () => this.time,
      say: (state: SaveState, now: Mark) => {
        this.states.push(state);
        this.marks.push(now);
      },
    };
    this.saver = new Saver(world, {
      desk: first,
      mark: { ...start, ...mark },
      revisedAt: 'revised',
      unreachable: 'unreachable',
      stale: 'staleEdit',
    });
  }

  type(desk: Desk, kind: Move['kind'] = 'edit') {
    this.saver.moved(kind, this.present, desk);
    this.present = desk;
  }

  wait(milliseconds: number) {
    this.time += milliseconds;
    const due = this.timers.filter(({ at }) => at <= this.time);
    this.timers = this.timers.filter(({ at }) => at > this.time);
    for (const { run } of due) run();
  }

  async #answer(answer: Answer<'wells.edit' | 'wells.save' | 'wells.desk'>) {
    this.calls.at(-1)?.answer(answer as never);
    await new Promise((done) => setTimeout(done));
  }

  refuse(code: string) {
    return this.#answer(refusedAs(code));
  }

  keep(edit: number, unrevised = true) {
    const value = { edit, unrevised, changedAt: `edit ${edit}`, troubles: [] };
    return this.#answer({ ok: true, value });
  }

  revise(revision: number) {
    return this.#answer({
      ok: true,
      value: { revision, changedAt: `rev ${revision}`, troubles: [] },
    });
  }

  theirs(desk: Desk, edit: number) {
    const value = { desk, edit, revision: 2, unrevised: true, changedAt: `edit ${edit}` };
    return this.#answer({ ok: true, value });
  }

  /** What was asked last: the call, the edit it was made upon, what it would write. */
  get asked() {
    const { name, upon, moves } = this.calls.at(-1)!;
    return [name, upon, moves!.map(({ kind, patch }) => [kind, ...patch.map(({ to }) => to)])];
  }

  get last() {
    return this.states.at(-1);
  }
}

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});

describe('saving by itself', () => {
  it('begins with the revision, and with what is on disk after it', () => {
    expect(bench.last).toEqual({ kind: 'kept', at: 'revised', revised: true });
    expect(new Bench({ unrevised: true }).last).toEqual({
      kind: 'kept',
      at: 'then',
      revised: false,
    });
  });

  it('puts a move on disk within a second, upon the newest edit', () => {
    bench.type(deskOf('a'));
    expect(bench.last).toEqual({ kind: 'waiting' });
    bench.wait(800);
    expect(bench.asked).toEqual(['edit', 4, [['edit', 'a']]]);
  });

  it('does so although typing goes on', () => {
    for (let at = 0; at < 10; at += 1) {
      bench.type(deskOf(String(at)), at === 0 ? 'edit' : 'amend');
      bench.wait(100);
    }
    expect(bench.calls).toHaveLength(1);
  });

  it('says that it is on disk only when the archive said so', async () => {
    bench.type(deskOf('a'));
    bench.wait(500);
    expect(bench.last).toEqual({ kind: 'saving' });
    await bench.keep(5);
    expect(bench.last).toEqual({ kind: 'kept', at: 'edit 5', revised: false });
    expect(bench.marks.at(-1)).toMatchObject({ edit: 5, revision: 2, unrevised: true });
  });

  it('sends what was typed meanwhile next, upon the new edit, one call at a time', async () => {
    bench.type(deskOf('a'));
    bench.wait(500);
    bench.type(deskOf('b'), 'amend');
    bench.wait(2000);
    expect(bench.calls).toHaveLength(1);
    await bench.keep(5);
    expect(bench.asked).toEqual(['edit', 5, [['amend', 'b']]]);
    expect(bench.states.filter(({ kind }) => kind === 'kept')).toHaveLength(1);
  });

  it('sends a step and its taking back: both are part of how it came about', () => {
    bench.type(deskOf('a'));
    bench.type(first, 'undo');
    bench.wait(500);
    expect(bench.asked).toEqual([
      'edit',
      4,
      [
        ['edit', 'a'],
        ['undo', 'first'],
      ],
    ]);
  });

  it('tries again by itself when nobody answered', async () => {
    bench.type(deskOf('a'));
    bench.wait(500);
    await bench.refuse('unreachable');
    expect(bench.last).toMatchObject({ kind: 'refused' });
    bench.wait(3000);
    expect(bench.asked).toEqual(['edit', 4, [['edit', 'a']]]);
    expect(bench.calls).toHaveLength(2);
  });

  it('stays refused until something is typed or it is asked to', async () => {
    bench.type(deskOf('a'));
    bench.wait(500);
    await bench.refuse('diskFull');
    bench.wait(9000);
    expect(bench.calls).toHaveLength(1);
    void bench.saver.flush();
    expect(bench.calls).toHaveLength(2);
  });

  it('sends at once when asked to, and nothing when there is nothing', async () => {
    await bench.saver.flush();
    expect(bench.calls).toHaveLength(0);
    bench.type(deskOf('a'));
    void bench.saver.flush();
    expect(bench.calls).toHaveLength(1);
  });

  it('sends nothing any more once it is stopped', () => {
    bench.type(deskOf('a'));
    bench.saver.stop();
    bench.wait(9000);
    expect(bench.calls).toHaveLength(0);
  });
});

describe('making a revision', () => {
  it('comes after what is not on disk yet, upon its edit', async () => {
    bench.type(deskOf('a'));
    const done = bench.saver.revise();
    await bench.keep(5);
    expect(bench.asked).toEqual(['save', 5, []]);
    await bench.revise(3);
    await done;
    expect(bench.last).toEqual({ kind: 'kept', at: 'rev 3', revised: true });
    expect(bench.marks.at(-1)).toMatchObject({ revision: 3, unrevised: false });
  });

  it('is not asked for where there is nothing to make one of', async () => {
    await bench.saver.revise();
    expect(bench.calls).toHaveLength(0);
    bench.type(deskOf('a'));
    bench.type(first, 'undo');
    const done = bench.saver.revise();
    await bench.keep(6, false);
    await done;
    expect(bench.calls).toHaveLength(1);
    expect(bench.last).toEqual({ kind: 'kept', at: 'revised', revised: true });
  });

  it('is not the newest any more as soon as something is typed', async () => {
    bench.type(deskOf('a'));
    void bench.saver.revise();
    await bench.keep(5);
    await bench.revise(3);
    bench.type(deskOf('b'));
    bench.wait(500);
    await bench.keep(6);
    expect(bench.last).toEqual({ kind: 'kept', at: 'edit 6', revised: false });
  });

  it('says why it was refused', async () => {
    bench = new Bench({ unrevised: true });
    void bench.saver.revise();
    await bench.refuse('diskFull');
    expect(bench.last).toMatchObject({ kind: 'refused', code: 'diskFull' });
  });

  it('takes another window’s edit in first where there is one', async () => {
    bench = new Bench({ unrevised: true });
    void bench.saver.revise();
    await bench.refuse('staleEdit');
    expect(bench.asked[0]).toBe('desk');
    await bench.theirs(deskOf('first', 'theirs'), 5);
    expect(bench.asked).toEqual(['save', 5, []]);
  });

  it('is heard of from another window', () => {
    bench = new Bench({ unrevised: true });
    bench.saver.heard({ edit: 4, revision: 3, unrevised: false, changedAt: 'now' });
    expect(bench.last).toEqual({ kind: 'kept', at: 'now', revised: true });
    expect(bench.marks.at(-1)).toMatchObject({ revision: 3 });
  });
});

describe('another window’s work', () => {
  const heard = (edit: number) =>
    bench.saver.heard({ edit, revision: 2, unrevised: true, changedAt: 'now' });

  it('comes in at once when nothing waits here', async () => {
    heard(5);
    expect(bench.asked[0]).toBe('desk');
    await bench.theirs(deskOf('theirs'), 5);
    expect(bench.laid).toEqual([deskOf('theirs')]);
    expect(bench.last).toEqual({ kind: 'kept', at: 'edit 5', revised: false });
    bench.type(deskOf('mine'));
    bench.wait(500);
    expect(bench.asked).toEqual(['edit', 5, [['edit', 'mine']]]);
  });

  it('is not asked for where the edit is this window’s own', async () => {
    bench.type(deskOf('a'));
    bench.wait(500);
    heard(5);
    await bench.keep(5);
    heard(5);
    expect(bench.calls).toHaveLength(1);
    expect(bench.laid).toEqual([]);
  });

  it('comes in beside what waits here where they do not meet, and that is sent upon it', async () => {
    bench.type(deskOf('mine'));
    bench.wait(500);
    await bench.refuse('staleEdit');
    await bench.theirs(deskOf('first', 'theirs'), 7);
    expect(bench.laid).toEqual([deskOf('mine', 'theirs')]);
    expect(bench.asked).toEqual(['edit', 7, [['edit', 'mine']]]);
  });

  it('is known as one’s own when only the answer got lost', async () => {
    bench.type(deskOf('mine'));
    bench.wait(500);
    await bench.refuse('unreachable');
    bench.wait(3000);
    await bench.refuse('staleEdit');
    await bench.theirs(deskOf('mine'), 5);
    expect(bench.laid).toEqual([]);
    expect(bench.last).toMatchObject({ kind: 'kept', at: 'edit 5' });
  });

  it('waits for a choice where it meets what was typed here; nothing is sent till then', async () => {
    bench.type(deskOf('mine'));
    heard(7);
    await bench.theirs(deskOf('theirs'), 7);
    expect(bench.last).toEqual({ kind: 'parted' });
    bench.type(deskOf('mine, longer'));
    bench.wait(9000);
    await bench.saver.flush();
    expect(bench.calls).toHaveLength(1);
  });

  it('is laid down when it is chosen', async () => {
    bench.type(deskOf('mine'));
    heard(7);
    await bench.theirs(deskOf('theirs', 'there'), 7);
    void bench.saver.choose('theirs');
    await bench.theirs(deskOf('theirs', 'there'), 7);
    expect(bench.laid).toEqual([deskOf('theirs', 'there')]);
    expect(bench.last).toEqual({ kind: 'kept', at: 'edit 7', revised: false });
  });

  it('is passed over only where mine is chosen, and mine goes to disk upon it', async () => {
    bench.type(deskOf('mine'));
    heard(7);
    await bench.theirs(deskOf('theirs', 'there'), 7);
    void bench.saver.choose('mine');
    await bench.theirs(deskOf('theirs, longer', 'there'), 8);
    expect(bench.laid).toEqual([deskOf('mine', 'there')]);
    expect(bench.asked).toEqual(['edit', 8, [['edit', 'mine']]]);
    await bench.keep(9);
    expect(bench.last).toMatchObject({ kind: 'kept' });
  });

  it('says why it cannot be fetched', async () => {
    heard(5);
    await bench.refuse('damaged');
    expect(bench.last).toMatchObject({ kind: 'refused', code: 'damaged' });
  });
});
