import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPath, valueAt, writePath } from '../../../core/base/recordPath.ts';

const steps = fc
  .tuple(
    fc.stringMatching(/^[a-zA-Z]\w*$/),
    fc.array(fc.oneof(fc.stringMatching(/^[a-zA-Z]\w*$/), fc.nat()), { maxLength: 5 }),
  )
  .map(([first, rest]) => [first, ...rest]);

describe('writePath', () => {
  it('writes as a person reads', () => {
    expect(writePath(['log', 3, 'to'])).toBe('log[3].to');
    expect(writePath(['marks', 0, 'strokes', 2, 1, 0])).toBe('marks[0].strokes[2][1][0]');
    expect(writePath([])).toBe('');
  });

  it('is read back by readPath', () => {
    fc.assert(
      fc.property(steps, (path) => {
        expect(readPath(writePath(path))).toEqual(path);
      }),
      { seed: 1 },
    );
  });
});

describe('valueAt', () => {
  const document = { log: [{ from: 0 }, { from: 2, to: null }], notes: '' };

  it('finds values that are empty or null', () => {
    expect(valueAt(document, 'log[1].to')).toBeNull();
    expect(valueAt(document, 'notes')).toBe('');
    expect(valueAt(document, '')).toBe(document);
  });

  it('gives undefined where the path leads nowhere', () => {
    expect(valueAt(document, 'log[7].to')).toBeUndefined();
    expect(valueAt(document, 'log[1].to.deeper')).toBeUndefined();
    expect(valueAt(undefined, 'log')).toBeUndefined();
  });
});
