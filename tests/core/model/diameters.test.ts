import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveDiameters } from '../../../core/model/diameters.ts';
import type { Component } from '../../../core/record/strings.ts';

function read(measures: Partial<Component>) {
  const component = { kind: 'plain', ...measures } as Component;
  return resolveDiameters(component, 'c', { string: 1, piece: component.kind });
}

describe('outside, wall and inside of a pipe', () => {
  it('give the third where two are recorded', () => {
    const all = { outsideMm: 110, upperOutsideMm: 110, wallMm: 4.2, insideMm: 101.6 };
    expect(read({ outside: 110, wall: 4.2 })).toEqual({ value: all, findings: [] });
    expect(read({ outside: 110, inside: 101.6 })).toEqual({ value: all, findings: [] });
    expect(read({ inside: 101.6, wall: 4.2 })).toEqual({ value: all, findings: [] });
  });

  it('are no more than the one that is recorded', () => {
    expect(read({ inside: 152.4 }).value).toEqual({ insideMm: 152.4 });
    expect(read({ outside: 110 }).value).toEqual({ outsideMm: 110, upperOutsideMm: 110 });
    expect(read({ wall: 5 }).value).toEqual({ wallMm: 5 });
    expect(read({ inside: 0, outside: 0, wall: 0 }).value).toEqual({});
  });

  it('may each be rounded to the millimetre', () => {
    expect(read({ outside: 110, wall: 4.2, inside: 102 }).findings).toEqual([]);
    expect(read({ outside: 110, wall: 4.2, inside: 102 }).value.insideMm).toBe(102);
  });

  it('contradict each other where they are more than a millimetre apart; the inside holds', () => {
    const { value, findings } = read({ outside: 110, wall: 4.2, inside: 100 });
    expect(value).toMatchObject({ outsideMm: 110, wallMm: 4.2, insideMm: 100 });
    expect(findings).toMatchObject([
      {
        code: 'string.sizesDisagree',
        severity: 'error',
        path: 'c.inside',
        values: { outsideMm: 110, wallMm: 4.2, insideMm: 100 },
      },
    ]);
  });

  it('cannot have an inside as wide as the outside: it is passed over and said', () => {
    const { value, findings } = read({ outside: 110, inside: 110 });
    expect(value).toEqual({ outsideMm: 110, upperOutsideMm: 110 });
    expect(findings).toMatchObject([{ code: 'string.insideTooWide', path: 'c.inside' }]);
    expect(read({ outside: 110, wall: 5, inside: 120 }).value.insideMm).toBe(100);
  });

  it('leave no inside where the wall is half the pipe or more', () => {
    expect(read({ outside: 110, wall: 55 }).value.insideMm).toBeUndefined();
    expect(read({ outside: 110, wall: 55 }).findings).toMatchObject([
      { code: 'string.wallTooThick', path: 'c.wall' },
    ]);
  });

  it('never give an inside as wide as the pipe, whatever is recorded', () => {
    const tenths = fc.option(fc.integer({ min: 0, max: 20_000 }), { nil: 0 });
    fc.assert(
      fc.property(tenths, tenths, tenths, (outside, wall, inside) => {
        const {
          outsideMm = Infinity,
          insideMm = 0,
          wallMm = 1,
        } = read({
          outside: outside / 10,
          wall: wall / 10,
          inside: inside / 10,
        }).value;
        expect(insideMm).toBeLessThan(outsideMm);
        expect(wallMm).toBeGreaterThan(0);
      }),
      { seed: 11 },
    );
  });
});

describe('a reducer', () => {
  const reducer = { kind: 'reducer' as const, outside: 160, upperOutside: 110 };

  it('has its inside at the narrower end, recorded or by the wall', () => {
    expect(read({ ...reducer, wall: 5 }).value).toMatchObject({ insideMm: 100, wallMm: 5 });
    expect(read({ ...reducer, inside: 100 }).value).toMatchObject({ insideMm: 100, wallMm: 5 });
  });

  it('has no outside from inside and wall, since they do not tell of which end', () => {
    expect(read({ kind: 'reducer', inside: 100, wall: 5 }).value).toEqual({
      insideMm: 100,
      wallMm: 5,
    });
  });
});
