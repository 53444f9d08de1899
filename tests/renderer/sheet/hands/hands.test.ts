// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { openFolder } from '../../mounted.ts';
import { findHandle } from '../../../../renderer/state/hands/handle.ts';
import { Hands } from '../../../../renderer/sheet/hands/hands.svelte.ts';

const log = [
  { from: 0, to: 3 },
  { from: 3, to: 9 },
  { from: 10, to: 12 },
];
let folder: ReturnType<typeof openFolder>;
let hands: Hands;
/** What the live sheet was asked, in its order. */
let asked: string[];

beforeEach(() => {
  folder = openFolder({
    log,
    bore: { depthReached: 12 },
    strings: [
      {
        components: [{ kind: 'plain', length: 6, count: 2 }],
        set: { by: 'bottom', depth: 11.5 },
      },
    ],
  });
  asked = [];
  hands = new Hands(folder, { hold: () => asked.push('hold'), letGo: () => asked.push('letGo') });
});

const edge = (id: string) => findHandle(hands.all, id)!;
const rows = () => folder.desk.record.log;

describe('an edge in the hand', () => {
  it('is shown where it would stand, and written when it is dropped, as one step', () => {
    expect(hands.take(edge('log[0].to'))).toBe(true);
    hands.move(3.514, 0.01, false);
    hands.move(4.236, 0.01, false);
    expect(rows()).toMatchObject([{ to: 4.24 }, { from: 4.24 }, {}]);
    expect(folder.canUndo).toBe(false);
    hands.drop();
    expect(rows()).toMatchObject([{ to: 4.24 }, { from: 4.24 }, {}]);
    folder.undo();
    expect(rows()).toEqual(log);
    expect(folder.canUndo).toBe(false);
  });

  it('keeps pages and scale as long as it is held', () => {
    hands.take(edge('log[0].to'));
    hands.move(5, 0.01, false);
    expect(asked).toEqual(['hold']);
    hands.drop();
    expect(asked).toEqual(['hold', 'letGo']);
  });

  it('leaves all as it was when it is given back', () => {
    hands.take(edge('log[0].to'));
    hands.move(5, 0.01, false);
    hands.cancel();
    expect(rows()).toEqual(log);
    expect([folder.canUndo, hands.held]).toEqual([false, undefined]);
    expect(asked).toEqual(['hold', 'letGo']);
  });

  it('makes no step where it is dropped where it was', () => {
    hands.take(edge('log[0].to'));
    hands.move(5, 0.01, false);
    hands.move(3.001, 0.01, false);
    hands.drop();
    expect(folder.canUndo).toBe(false);
  });

  it('may change its mind about moving a part alone', () => {
    hands.take(edge('log[0].to'));
    hands.move(5, 0.01, true);
    expect(rows()).toMatchObject([{ to: 3 }, { from: 5 }, {}]);
    hands.move(5, 0.01, false);
    expect(rows()).toMatchObject([{ to: 5 }, { from: 5 }, {}]);
  });

  it('stays chosen when it meets a neighbour or parts from it', () => {
    hands.take(edge('log[2].from'));
    hands.move(2, 0.01, false);
    hands.drop();
    expect(rows()).toMatchObject([{}, { to: 9 }, { from: 9 }]);
    expect(hands.chosen).toBe('log[1].to');
    hands.take(edge('log[1].to'));
    hands.move(9.5, 0.01, true);
    hands.drop();
    expect(hands.chosen).toBe('log[2].from');
  });

  it('does not vanish while it lies on a neighbour', () => {
    hands.take(edge('log[2].from'));
    hands.move(9, 0.01, false);
    expect(edge('log[2].from')).toBeDefined();
  });

  it('stays where it is and says so where it is computed', () => {
    const joint = hands.all.find((one) => one.edge.kind === 'joint')!;
    expect(hands.take(joint)).toBe(false);
    expect([hands.refused, hands.held]).toEqual([true, undefined]);
    hands.settle();
    expect(hands.refused).toBe(false);
    hands.nudge(joint, 1, 0.01, false);
    expect(hands.refused).toBe(true);
    expect(folder.canUndo).toBe(false);
  });
});

describe('nudges', () => {
  const nudge = (id: string, by: -1 | 1) => hands.nudge(edge(id), by, 0.01, false);

  it('in a row are one step', () => {
    nudge('log[0].to', 1);
    nudge('log[0].to', 1);
    expect(rows()?.[0]).toEqual({ from: 0, to: 3.02 });
    folder.undo();
    expect(rows()).toEqual(log);
  });

  it('of another run are a step of their own', () => {
    nudge('log[0].to', 1);
    hands.settle();
    nudge('log[0].to', 1);
    folder.undo();
    expect(rows()?.[0]).toEqual({ from: 0, to: 3.01 });
  });

  it('are taken back together, and only once', () => {
    nudge('log[0].to', 1);
    nudge('log[0].to', 1);
    expect(hands.takeBack()).toBe(true);
    expect(rows()).toEqual(log);
    expect(hands.takeBack()).toBe(false);
  });

  it('are not taken back a second time after undo', () => {
    folder.edit((desk) => ({ ...desk, record: { ...desk.record, notes: 'kept' } }));
    nudge('log[0].to', 1);
    folder.undo();
    expect(hands.takeBack()).toBe(false);
    expect(folder.desk.record.notes).toBe('kept');
  });
});
