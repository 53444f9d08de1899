import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../core/base/recordPath.ts';
import { deepFreeze } from '../../../core/record/freeze.ts';
import { insertAt, removeAt, reorderAt, setAt } from '../../../renderer/state/edit.ts';

const record = deepFreeze({
  site: { village: 'A' },
  log: [
    { from: 0, to: 2 },
    { from: 2, to: 5 },
  ],
});

describe('setting a value by its path', () => {
  it('gives a new record and leaves the old one as it was', () => {
    const next = setAt(record, 'log[1].to', 6);
    expect(next.log[1]).toEqual({ from: 2, to: 6 });
    expect(record.log[1]).toEqual({ from: 2, to: 5 });
  });

  it('shares what did not change', () => {
    const next = setAt(record, 'log[1].to', 6);
    expect(next.site).toBe(record.site);
    expect(next.log[0]).toBe(record.log[0]);
  });

  it('gives the very same record when the value is the same', () => {
    expect(setAt(record, 'log[1].to', 5)).toBe(record);
  });

  it('makes the chapters and lists on the way', () => {
    expect(setAt({}, 'strings[0].components[0].kind', 'cap')).toEqual({
      strings: [{ components: [{ kind: 'cap' }] }],
    });
  });

  it('takes the field away for an absent value', () => {
    expect(setAt(record, 'site.village', undefined).site).toEqual({});
    expect('village' in setAt(record, 'site.village', undefined).site).toBe(false);
  });

  it('keeps fields that it does not know', () => {
    const odd = deepFreeze({ site: { village: 'A', future: { x: 1 } } });
    expect(setAt(odd, 'site.village', 'B').site.future).toBe(odd.site.future);
  });

  it('freezes what it makes', () => {
    const next = setAt(record, 'site.committee.chair', 'N');
    expect(Object.isFrozen(next)).toBe(true);
    expect(Object.isFrozen(valueAt(next, 'site.committee'))).toBe(true);
  });

  it('throws behind the end of a list, since that is a defect', () => {
    expect(() => setAt(record, 'log[5].to', 1)).toThrow(RangeError);
  });

  it('can be read back where it was set, whatever the value', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(2), (value, index) => {
        fc.pre(value !== undefined);
        const path = `log[${index}].words`;
        expect(valueAt(setAt(record, path, value), path)).toEqual(value);
      }),
      { seed: 7 },
    );
  });
});

describe('editing a list by its path', () => {
  it('inserts before an item, and makes the list where there was none', () => {
    expect(insertAt(record, 'log', 1, { from: 1 }).log.map(({ from }) => from)).toEqual([0, 1, 2]);
    expect(insertAt({}, 'levels', 0, { reading: 3 })).toEqual({ levels: [{ reading: 3 }] });
  });

  it('removes one item', () => {
    expect(removeAt(record, 'log', 0).log).toEqual([{ from: 2, to: 5 }]);
  });

  it('puts items into another order', () => {
    expect(reorderAt(record, 'log', [1, 0]).log.map(({ from }) => from)).toEqual([2, 0]);
  });
});
