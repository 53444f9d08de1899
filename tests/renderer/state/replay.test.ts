import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Desk, Move } from '../../../core/record/desk.ts';
import { joins, push, redo, settle, undo, type History } from '../../../renderer/state/history.ts';
import { replay } from '../../../renderer/state/replay.ts';
import { moveTo } from '../../moves.ts';

const deskOf = (notes: string, typed = {}): Desk => ({
  record: { schemaVersion: 1, notes },
  typed,
});
const base = deskOf('');

/** Everything that a history holds, so that two can be compared. */
function stepsOf(history: History<Desk>): string[][] {
  const back: string[] = [];
  const forth: string[] = [];
  for (let at = history.past; at; at = at.below) back.push(JSON.stringify(at.top));
  for (let at = history.future; at; at = at.below) forth.push(JSON.stringify(at.top));
  return [back, [JSON.stringify(history.present)], forth];
}

/** What a person does: types a letter, leaves the field, undoes, redoes. */
const deeds = fc.array(fc.constantFrom('a', 'b', 'leave', 'undo', 'redo'), { maxLength: 40 });

/** Does it as the page does, and notes each move as it goes to the archive. */
function work(doing: readonly string[]): { history: History<Desk>; moves: Move[] } {
  let history = replay(base, []);
  const moves: Move[] = [];
  const go = (kind: Move['kind'], next: History<Desk>) => {
    if (next.present !== history.present)
      moves.push(JSON.parse(JSON.stringify(moveTo(history.present, next.present, kind))) as Move);
    history = next;
  };
  for (const deed of doing) {
    if (deed === 'leave') history = settle(history);
    else if (deed === 'undo') go('undo', undo(history));
    else if (deed === 'redo') go('redo', redo(history));
    else {
      const after = deskOf(`${history.present.record.notes}${deed}`);
      go(joins(history, 'notes') ? 'amend' : 'edit', push(history, after, 'notes'));
    }
  }
  return { history, moves };
}

describe('the history that is made again of its moves', () => {
  it('is what it was: the same steps back and forth, whatever was done', () => {
    fc.assert(
      fc.property(deeds, (doing) => {
        const { history, moves } = work(doing);
        expect(stepsOf(replay(base, moves))).toEqual(stepsOf(history));
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('leads back to the base, step by step', () => {
    let history = replay(base, work(['a', 'b', 'leave', 'a', 'leave', 'b']).moves);
    const seen: unknown[] = [];
    for (; history.past; history = undo(history)) seen.push(history.present.record.notes);
    expect([...seen, history.present.record.notes]).toEqual(['abab', 'aba', 'ab', '']);
  });

  it('has the texts that could not be read', () => {
    const odd = deskOf('', { 'log[0].to': '3x' });
    expect(replay(base, [moveTo(base, odd)]).present).toEqual(odd);
  });

  it('is frozen, so that nobody changes a step that undo will need', () => {
    const history = replay(base, [moveTo(base, deskOf('x'))]);
    expect(Object.isFrozen(history.present.record)).toBe(true);
    expect(Object.isFrozen(undo(history).present)).toBe(true);
  });

  it('takes a step back that was made over other steps as a step of its own', () => {
    const [one, two, other] = [deskOf('one'), deskOf('two'), deskOf('other')];
    const moves = [moveTo(base, one), moveTo(one, two), moveTo(two, other, 'undo')];
    const history = replay(base, moves);
    expect(history.present).toEqual(other);
    expect(undo(history).present).toEqual(two);
  });
});
