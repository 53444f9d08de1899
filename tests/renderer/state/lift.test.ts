// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { openFolder } from '../mounted.ts';
import { setAt } from '../../../renderer/state/edit.ts';
import type { Desk } from '../../../renderer/state/desk.ts';

const log = [
  { from: 0, to: 3 },
  { from: 3, to: 9 },
];
const deeper = (desk: Desk) => ({ ...desk, record: setAt(desk.record, 'log[1].to', 12) });

describe('what is lifted', () => {
  it('is shown in the record and in the model, and is no step', () => {
    const folder = openFolder({ log });
    folder.lift(deeper);
    expect(folder.desk.record.log?.[1]?.to).toBe(12);
    expect(folder.model.bore.depthM).toBe(12);
    expect(folder.canUndo).toBe(false);
  });

  it('goes back to what was when it is let go', () => {
    const folder = openFolder({ log });
    const before = folder.desk;
    folder.lift(deeper);
    folder.lift();
    expect(folder.desk).toBe(before);
  });

  it('always starts from the last step, and not from what is lifted', () => {
    const folder = openFolder({ log });
    const twice = (desk: Desk) => ({
      ...desk,
      record: setAt(desk.record, 'log[1].to', 2 * (desk.record.log?.[1]?.to ?? 0)),
    });
    folder.lift(twice);
    folder.lift(twice);
    expect(folder.desk.record.log?.[1]?.to).toBe(18);
  });

  it('becomes one step for undo when it is made', () => {
    const folder = openFolder({ log });
    const before = folder.desk;
    folder.lift(deeper);
    folder.edit(deeper);
    expect(folder.desk.record.log?.[1]?.to).toBe(12);
    folder.undo();
    expect(folder.desk).toBe(before);
    expect(folder.canUndo).toBe(false);
  });

  it('is let go by undo', () => {
    const folder = openFolder({ log });
    folder.edit((desk) => ({ ...desk, record: setAt(desk.record, 'notes', 'x') }));
    folder.lift(deeper);
    folder.undo();
    expect(folder.desk.record).toMatchObject({ log });
  });

  it('cannot be in an archive that can only be read', () => {
    const folder = openFolder({ log }, true);
    folder.lift(deeper);
    expect(folder.desk.record.log).toEqual(log);
  });
});
