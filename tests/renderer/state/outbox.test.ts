import { beforeEach, describe, expect, it } from 'vitest';
import type { Desk } from '../../../core/record/desk.ts';
import { Outbox } from '../../../renderer/state/outbox.ts';

const deskOf = (notes: string): Desk => ({ record: { schemaVersion: 1, notes }, typed: {} });
const [a, b, c, d] = [deskOf('a'), deskOf('b'), deskOf('c'), deskOf('d')];
const to = (notes: string) => [{ at: ['record', 'notes'], to: notes }];

let outbox: Outbox;

beforeEach(() => {
  outbox = new Outbox();
});

describe('moves on their way', () => {
  it('go in their order, with what they changed', () => {
    outbox.put('edit', a, b);
    outbox.put('edit', b, c);
    outbox.put('undo', c, b);
    expect(outbox.last).toBe(b);
    expect(outbox.take()).toEqual([
      { kind: 'edit', patch: to('b') },
      { kind: 'edit', patch: to('c') },
      { kind: 'undo', patch: to('b') },
    ]);
  });

  it('go as one while they are letters of one word that waits', () => {
    outbox.put('edit', a, b);
    outbox.put('amend', b, c);
    outbox.put('amend', c, d);
    expect(outbox.take()).toEqual([{ kind: 'edit', patch: to('d') }]);
  });

  it('are not changed any more once they are under way', () => {
    outbox.put('edit', a, b);
    outbox.take();
    outbox.put('amend', b, c);
    expect(outbox.drop()).toBe(b);
    expect(outbox.take()).toEqual([{ kind: 'amend', patch: to('c') }]);
  });

  it('never grow a step back', () => {
    outbox.put('undo', b, a);
    outbox.put('amend', a, c);
    expect(outbox.take().map(({ kind }) => kind)).toEqual(['undo', 'amend']);
  });

  it('are there still when they did not arrive, with what came since', () => {
    outbox.put('edit', a, b);
    outbox.take();
    outbox.put('edit', b, c);
    outbox.putBack();
    expect(outbox.isEmpty).toBe(false);
    expect(outbox.take()).toHaveLength(2);
    expect(outbox.drop()).toBe(c);
    expect(outbox.isEmpty).toBe(true);
  });

  it('are one step when they come after another window’s work, and none where nothing differs', () => {
    outbox.put('amend', a, b);
    outbox.put('undo', b, c);
    outbox.replace(a, d);
    expect(outbox.take()).toEqual([{ kind: 'edit', patch: to('d') }]);
    outbox.replace(a, structuredClone(a));
    expect(outbox.isEmpty).toBe(true);
  });
});
