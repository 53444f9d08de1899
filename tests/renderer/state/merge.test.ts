import { describe, expect, it } from 'vitest';
import type { Desk } from '../../../core/record/desk.ts';
import { deepFreeze } from '../../../core/record/freeze.ts';
import { merge } from '../../../renderer/state/merge.ts';

const kept: Desk = deepFreeze({
  record: {
    schemaVersion: 1,
    site: { village: 'A', district: 'B' },
    log: [
      { from: 0, to: 2 },
      { from: 2, to: 5 },
    ],
  },
  typed: {},
});

const withRecord = (parts: object, typed = {}): Desk => ({
  record: { ...kept.record, ...parts },
  typed: { ...kept.typed, ...typed },
});
const [first, second] = kept.record.log!;
const row = { from: 5, to: 9 };

describe('two desks that came from one', () => {
  it('are one by themselves when they changed different places', () => {
    const mine = withRecord({ site: { village: 'Mine', district: 'B' } }, { 'log[0].to': '3x' });
    const theirs = withRecord({ site: { village: 'A', district: 'Theirs' }, log: [first!] });
    const all = withRecord({ site: { village: 'Mine', district: 'Theirs' }, log: [first!] });
    expect(merge(kept, mine, { ...theirs, typed: {} })).toBeUndefined();
    expect(merge(kept, { ...mine, typed: {} }, theirs)).toEqual(all);
  });

  it('are theirs when nothing was done here, and mine when they did nothing', () => {
    const other = withRecord({ notes: 'x' });
    expect(merge(kept, kept, other)).toEqual(other);
    expect(merge(kept, other, kept)).toEqual(other);
  });

  it('are one when both did the same', () => {
    const same = withRecord({ notes: 'x' });
    expect(merge(kept, same, structuredClone(same))).toEqual(same);
  });

  it('wait for a choice when both changed the same field', () => {
    const [mine, theirs] = [withRecord({ notes: 'mine' }), withRecord({ notes: 'theirs' })];
    expect(merge(kept, mine, theirs)).toBeUndefined();
    expect(merge(kept, mine, theirs, 'mine')).toEqual(mine);
    expect(merge(kept, mine, theirs, 'theirs')).toEqual(theirs);
  });

  it('keep what both did elsewhere, whoever is chosen', () => {
    const mine = withRecord({ notes: 'mine', log: [first!, second!, row] });
    const theirs = withRecord({ notes: 'theirs', site: { village: 'Theirs', district: 'B' } });
    const elsewhere = { site: theirs.record.site, log: mine.record.log };
    expect(merge(kept, mine, theirs, 'mine')?.record).toMatchObject({
      notes: 'mine',
      ...elsewhere,
    });
    expect(merge(kept, mine, theirs, 'theirs')?.record).toMatchObject({
      notes: 'theirs',
      ...elsewhere,
    });
  });

  it('never lay a change of a row into the row that took its place', () => {
    const mine = withRecord({ log: [first!, { ...second!, to: 6 }] });
    for (const log of [[second!, first!], [second!], [row, first!, second!]])
      expect(merge(kept, mine, withRecord({ log }))).toBeUndefined();
  });

  it('wait for a choice when a text was typed into a row that moved', () => {
    const mine = withRecord({}, { 'log[1].to': '3x' });
    expect(merge(kept, mine, withRecord({ log: [row, first!, second!] }))).toBeUndefined();
    expect(merge(kept, mine, withRecord({ notes: 'x' }))).toEqual(
      withRecord({ notes: 'x' }, { 'log[1].to': '3x' }),
    );
  });

  it('leave what did not change the very same, and freeze the rest', () => {
    const merged = merge(kept, kept, withRecord({ notes: 'x' }))!;
    expect(merged.record.log).toBe(kept.record.log);
    expect(Object.isFrozen(merged.record)).toBe(true);
  });
});
