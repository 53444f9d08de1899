import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begin, push, redo, settle, undo } from '../../../renderer/state/history.ts';

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
