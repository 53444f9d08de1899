import { beforeEach, describe, expect, it } from 'vitest';
import type { Answer } from '../../../core/contract/calls.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { makeSaver, type Saver, type SaveState } from '../../../renderer/state/saver.ts';

type SaveAnswer = Answer<'wells.save'>;

const recordOf = (notes: string): WellRecord => ({ schemaVersion: 1, notes });
const first = recordOf('first');
const refusedAs = (code: string): SaveAnswer => ({ ok: false, error: { code, sentence: code } });

/** A clock that stands until it is moved, and an archive that answers when it is told to. */
class Bench {
  time = 0;
  timers: { at: number; run: () => void }[] = [];
  calls: { record: WellRecord; revision: number; answer: (answer: SaveAnswer) => void }[] = [];
  states: SaveState[] = [];
  readonly saver: Saver;

  constructor() {
    const world = {
      save: (record: WellRecord, revision: number) =>
        new Promise<SaveAnswer>((answer) => this.calls.push({ record, revision, answer })),
      after: (milliseconds: number, run: () => void) => {
        const timer = { at: this.time + milliseconds, run };
        this.timers.push(timer);
        return () => void (this.timers = this.timers.filter((one) => one !== timer));
      },
      now: () => this.time,
      say: (state: SaveState) => this.states.push(state),
    };
    this.saver = makeSaver(world, {
      record: first,
      revision: 4,
      at: 'then',
      unreachable: 'unreachable',
      stale: 'stale',
    });
  }

  wait(milliseconds: number) {
    this.time += milliseconds;
    const due = this.timers.filter(({ at }) => at <= this.time);
    this.timers = this.timers.filter(({ at }) => at > this.time);
    for (const { run } of due) run();
  }

  async answer(answer: SaveAnswer) {
    this.calls.at(-1)?.answer(answer);
    await new Promise((done) => setTimeout(done));
  }

  get last() {
    return this.states.at(-1);
  }
}

const savedAs = (revision: number): SaveAnswer => ({
  ok: true,
  value: { revision, changedAt: `at ${revision}`, troubles: [] },
});

describe('saving by itself', () => {
  let bench: Bench;
  beforeEach(() => {
    bench = new Bench();
  });

  it('saves an edit within a second, upon the revision that is open', () => {
    bench.saver.changed(recordOf('a'));
    expect(bench.last).toEqual({ kind: 'waiting' });
    bench.wait(999);
    expect(bench.calls).toMatchObject([{ record: recordOf('a'), revision: 4 }]);
  });

  it('saves within a second although typing goes on', () => {
    for (let at = 0; at < 10; at += 1) {
      bench.saver.changed(recordOf(String(at)));
      bench.wait(100);
    }
    expect(bench.calls).toHaveLength(1);
  });

  it('says saved only when the archive said so', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    expect(bench.last).toEqual({ kind: 'saving' });
    await bench.answer(savedAs(5));
    expect(bench.last).toEqual({ kind: 'saved', at: 'at 5' });
  });

  it('saves what was typed meanwhile next, upon the new revision, one call at a time', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    bench.saver.changed(recordOf('b'));
    bench.wait(2000);
    expect(bench.calls).toHaveLength(1);
    await bench.answer(savedAs(5));
    expect(bench.calls[1]).toMatchObject({ record: recordOf('b'), revision: 5 });
    expect(bench.states).not.toContainEqual({ kind: 'saved', at: 'at 5' });
  });

  it('saves nothing when an edit was taken back', () => {
    bench.saver.changed(recordOf('a'));
    bench.saver.changed(first);
    bench.wait(5000);
    expect(bench.calls).toHaveLength(0);
    expect(bench.last).toEqual({ kind: 'saved', at: 'then' });
  });

  it('tries again by itself when nobody answered', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    await bench.answer(refusedAs('unreachable'));
    expect(bench.last).toMatchObject({ kind: 'refused' });
    bench.wait(3000);
    expect(bench.calls).toHaveLength(2);
  });

  it('does not try again by itself upon a revision that is no longer the newest', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    await bench.answer(refusedAs('stale'));
    bench.saver.changed(recordOf('b'));
    bench.wait(9000);
    expect(bench.calls).toHaveLength(1);
    expect(bench.last).toMatchObject({ kind: 'refused', code: 'stale' });
  });

  it('saves what lies here once it was put upon the newest revision', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    await bench.answer(refusedAs('stale'));
    bench.saver.rebase(9, 'later');
    void bench.saver.flush();
    expect(bench.calls[1]).toMatchObject({ record: recordOf('a'), revision: 9 });
  });

  it('is saved as it is when the newer record was taken', async () => {
    bench.saver.changed(recordOf('a'));
    bench.wait(500);
    await bench.answer(refusedAs('stale'));
    bench.saver.rebase(9, 'later', recordOf('theirs'));
    bench.wait(9000);
    expect(bench.calls).toHaveLength(1);
    expect(bench.last).toEqual({ kind: 'saved', at: 'later' });
  });

  it('saves at once when asked to', () => {
    bench.saver.changed(recordOf('a'));
    void bench.saver.flush();
    expect(bench.calls).toHaveLength(1);
  });
});
