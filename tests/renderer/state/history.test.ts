import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amend, begin, joins, push, redo, settle, undo } from '../../../renderer/state/history.ts';

describe('the steps of undo', () => {
  it('go back to what was and forward again', () => {
    const history = push(push(begin('a'), 'b'), 'c');
    expect(undo(history).present).toBe('b');
    expect(undo(undo(history)).present).toBe('a');
    expect(redo(undo(history)).present).toBe('c');
  });

  it('stay where they are at either end', () => {
    const history = begin('a');
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it('forget what would be again as soon as something new is done', () => {
    const history = push(undo(push(begin('a'), 'b')), 'c');
    expect(redo(history).present).toBe('c');
    expect(undo(history).present).toBe('a');
  });

  it('count as one while their key is the same', () => {
    const typed = push(push(push(begin(''), '1', 'to'), '12', 'to'), '12.5', 'to');
    expect(undo(typed).present).toBe('');
  });

  it('count apart for another key, and once the hand has left the field', () => {
    const other = push(push(begin('a'), 'b', 'to'), 'c', 'from');
    expect(undo(other).present).toBe('b');
    const again = push(settle(push(begin('a'), 'b', 'to')), 'c', 'to');
    expect(undo(again).present).toBe('b');
  });

  it('do not count when nothing changed', () => {
    const history = begin('a');
    expect(push(history, 'a')).toBe(history);
  });

  it('do not join a step that was taken back', () => {
    const history = push(undo(push(begin('a'), 'b', 'to')), 'c', 'to');
    expect(undo(history).present).toBe('a');
  });

  it('say whether what comes next goes on with the last one', () => {
    const typed = push(begin('a'), 'b', 'to');
    expect([joins(typed, 'to'), joins(typed, 'from'), joins(typed, undefined)]).toEqual([
      true,
      false,
      false,
    ]);
    expect(joins(push(begin('a'), 'b'), undefined)).toBe(false);
    expect(joins(settle(typed), 'to')).toBe(false);
  });

  it('stay as many when the present is replaced', () => {
    const history = amend(push(begin('a'), 'b'), 'c');
    expect(history.present).toBe('c');
    expect(undo(history).present).toBe('a');
  });

  it('are never too many: the first of a hundred thousand comes back', () => {
    let history = begin(0);
    for (let step = 1; step <= 100_000; step += 1) history = push(history, step);
    while (history.past) history = undo(history);
    expect(history.present).toBe(0);
    while (history.future) history = redo(history);
    expect(history.present).toBe(100_000);
  });

  it('return to the start after as many undos as steps, for any steps', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1 }), { maxLength: 50 }), (values) => {
        const steps = values.map((value, at) => value * 100 + at);
        let history = steps.reduce((past, step) => push(past, step), begin(0));
        for (const step of steps.toReversed()) {
          expect(history.present).toBe(step);
          history = undo(history);
        }
        expect(history.present).toBe(0);
      }),
      { seed: 11 },
    );
  });
});
