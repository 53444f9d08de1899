import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyPatch, diff, isSame, meets, type Change } from '../../../core/base/patch.ts';
import { deepFreeze } from '../../../core/record/freeze.ts';

/** JSON as it comes out of a file: without the negative zero, which JSON does not write. */
const json = fc.jsonValue({ maxDepth: 4 }).map((value) => JSON.parse(JSON.stringify(value)));

/** Two documents that share much, as those before and after an edit do. */
const edited = fc.tuple(json, json, json).map(([shared, before, after]) => [
  { shared, list: [shared, before], only: before },
  { shared, list: [shared, after], more: after },
]);

const pairs = fc.oneof(fc.tuple(json, json), edited);
const laws = { seed: 20250309, numRuns: 500 };

const record = deepFreeze({
  site: { village: 'A', district: 'B' },
  log: [
    { from: 0, to: 2 },
    { from: 2, to: 5 },
    { from: 5, to: 9 },
  ],
});

describe('the patch between two documents', () => {
  it('leads from the one to the other', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        expect(applyPatch(before, diff(before, after))).toEqual(after);
      }),
      laws,
    );
  });

  it('is empty for a document and its copy, and only then', () => {
    fc.assert(
      fc.property(json, json, (one, other) => {
        expect(diff(one, structuredClone(one))).toEqual([]);
        expect(diff(one, other).length === 0).toBe(isSame(one, other));
      }),
      laws,
    );
  });

  it('is the same after it was written as JSON and read again', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const patch = diff(before, after);
        expect(JSON.parse(JSON.stringify(patch))).toEqual(patch);
      }),
      laws,
    );
  });

  it('leaves the document that it is applied to as it was', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const written = JSON.stringify(before);
        applyPatch(deepFreeze(before), diff(before, after));
        expect(JSON.stringify(before)).toBe(written);
      }),
      laws,
    );
  });

  it('has no place within another', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const patch = diff(before, after);
        patch.forEach((one, at) =>
          expect(patch.slice(at + 1).some((other) => meets(one, other))).toBe(false),
        );
      }),
      laws,
    );
  });

  it('names the place alone, and shares all others', () => {
    const after = { ...record, site: { ...record.site, village: 'C' } };
    const patch = diff(record, after);
    expect(patch).toEqual([{ at: ['site', 'village'], to: 'C' }]);
    const again = applyPatch(record, patch);
    expect(again.log).toBe(record.log);
  });

  it('takes a key away, which is not the same as null', () => {
    expect(diff({ a: 1, b: 2 }, { b: 2 })).toEqual([{ at: ['a'] }]);
    expect(diff({ a: 1 }, { a: null })).toEqual([{ at: ['a'], to: null }]);
    expect(applyPatch({ a: 1, b: 2 }, [{ at: ['a'] }])).toEqual({ b: 2 });
  });

  it('changes one row of a list where the others stay in their places', () => {
    const log = record.log.with(1, { from: 2, to: 6 });
    expect(diff(record, { ...record, log })).toEqual([{ at: ['log', 1, 'to'], to: 6 }]);
  });

  it('replaces a list whole when a row comes, goes or changes its place', () => {
    const [first, second, third] = record.log as [object, object, object];
    const whole = (log: object[]) => expect(diff(record.log, log)).toEqual([{ at: [], to: log }]);
    whole([first, second]);
    whole([first, second, third, { from: 9, to: 10 }]);
    whole([second, first, third]);
    whole([second, third, { from: 9, to: 10 }]);
  });

  it('carries keys that mean something to the language as what they are: keys', () => {
    const after = JSON.parse('{"__proto__": {"a": 1}, "constructor": 2}') as object;
    const made = applyPatch({}, JSON.parse(JSON.stringify(diff({}, after))));
    expect(JSON.stringify(made)).toBe(JSON.stringify(after));
    expect(Object.getPrototypeOf(made)).toBe(Object.prototype);
  });

  it('is refused by a document of another shape, since that is a defect', () => {
    expect(() => applyPatch({ log: [] }, [{ at: ['log', 0], to: 1 }])).toThrow(RangeError);
    expect(() => applyPatch({ a: 1 }, [{ at: ['a', 'b'], to: 1 }])).toThrow(RangeError);
    expect(() => applyPatch({}, [{ at: ['a', 'b'], to: 1 }])).toThrow(RangeError);
  });
});

describe('two changes of one document', () => {
  const at = (...steps: (string | number)[]): Change => ({ at: steps, to: 1 });

  it('meet in one place, and where one place lies within the other', () => {
    expect(meets(at('log', 1), at('log', 1))).toBe(true);
    expect(meets(at('log'), at('log', 1, 'to'))).toBe(true);
    expect(meets(at('log', 1, 'to'), at())).toBe(true);
  });

  it('do not meet side by side', () => {
    expect(meets(at('log', 1, 'to'), at('log', 1, 'from'))).toBe(false);
    expect(meets(at('log', 1), at('log', 11))).toBe(false);
  });

  it('can be made one after the other, in either order, when they do not meet', () => {
    const few = fc.integer({ min: 0, max: 2 });
    const row = fc.record({ x: few, y: few });
    const document = fc.record({ a: few, b: few, rows: fc.array(row, { maxLength: 3 }) });
    fc.assert(
      fc.property(document, document, document, (before, one, other) => {
        const [p, t] = [diff(before, one), diff(before, other)];
        fc.pre(!p.some((mine) => t.some((theirs) => meets(mine, theirs))));
        expect(applyPatch(applyPatch(before, p), t)).toEqual(applyPatch(applyPatch(before, t), p));
      }),
      laws,
    );
  });
});
