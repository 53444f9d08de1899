import { describe, expect, it } from 'vitest';
import type { Component } from '../../../core/record/strings.ts';
import { pipe110, resolve, said } from './well.ts';

const string = (...components: Component[]) =>
  resolve({ strings: [{ components, set: { by: 'bottom', depth: 12 } }] });

describe('sizes that a string lacks', () => {
  const bare = { kind: 'plain' as const, length: 3 };

  it('are said once with the count of its pieces, whatever their number', () => {
    const model = string({ ...bare, count: 2 }, { ...pipe110, length: 3 }, bare);
    // From the bottom: two without sizes 12–6 m, one of 110 mm 6–3 m, one without 3–0 m.
    expect(said(model, 'string.noDiameter')).toMatchObject([
      {
        severity: 'warning',
        path: 'strings[0].components[0].outside',
        fromM: 0,
        toM: 12,
        values: { string: 1, count: 3, of: 4 },
      },
    ]);
    expect(said(model, 'string.noWall')).toMatchObject([
      {
        severity: 'note',
        path: 'strings[0].components[0].wall',
        values: { string: 1, count: 3, of: 4 },
      },
    ]);
  });

  it('do not include the wall where the inside is recorded', () => {
    const model = string({ ...bare, inside: 102 });
    expect(said(model, 'string.noWall')).toEqual([]);
    expect(said(model, 'string.noDiameter')).toHaveLength(1);
  });

  it('do not include the wall of a cap', () => {
    const model = string({ kind: 'cap', length: 0.1, outside: 110 }, { ...pipe110, length: 3 });
    expect(model.findings.filter(({ code }) => code.startsWith('string.'))).toEqual([]);
  });
});

describe('a string of which only the inside is recorded', () => {
  it('tells how much it holds, and not how much it takes up', () => {
    const model = resolve({
      bore: { sections: [{ from: 0, to: 12, diameter: 200 }] },
      strings: [
        {
          components: [{ kind: 'plain', inside: 100, length: 12 }],
          set: { by: 'bottom', depth: 12 },
        },
      ],
      levels: [{ reading: 2, datum: 'ground', state: 'static' }],
      pump: { intake: 10, bodyDiameter: 102 },
    });
    // π/4 × 0.1² × 12 m = 94.248 L; of these 10 m are under water, 78.540 L.
    expect(model.contents[0]!.litres).toBeCloseTo(94.248, 3);
    expect(model.contents[0]!.waterLitres).toBeCloseTo(78.54, 3);
    expect(model.totals.displacedLitres).toBeUndefined();
    expect(model.annulus[0]!.litres).toBeUndefined();
    expect(said(model, 'pump.widerThanCasing')).toMatchObject([
      { values: { bodyMm: 102, insideMm: 100 } },
    ]);
  });
});
