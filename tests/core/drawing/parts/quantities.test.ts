import { describe, expect, it } from 'vitest';
import { layQuantities } from '../../../../core/drawing/parts/quantities.ts';
import { resolve } from '../../model/well.ts';
import { frenchKit, kit, textsOf, wordsOf } from '../sample.ts';

const chapters: Parameters<typeof resolve>[0] = {
  bore: { sections: [{ from: 0, to: 10, diameter: 200 }], depthReached: 10 },
  strings: [
    {
      components: [
        { kind: 'screen', outside: 110, wall: 5, length: 3, slotWidth: 0.75 },
        { kind: 'plain', outside: 110, wall: 5, length: 3, count: 2 },
        { kind: 'plain', outside: 110, wall: 5, length: 1.4 },
      ],
      set: { by: 'bottom', depth: 10 },
    },
  ],
  annulus: [
    { from: 0, to: 2, fill: 'cementGrout', sanitary: true },
    { from: 2, to: 10, fill: 'gravelPack', litres: 200, sacks: 4 },
  ],
  levels: [{ reading: 4, datum: 'ground', state: 'static' }],
};

/** Cells of the rows, from the top; a row is what stands on one height. */
function rowsOf(given = chapters, room?: number): string[][] {
  const block = layQuantities(kit, resolve(given), 90, room)!;
  const rows = new Map<string, string[]>();
  for (const { y, text } of textsOf(block.draw(0, 0))) {
    const key = y.toFixed(3);
    rows.set(key, [...(rows.get(key) ?? []), text]);
  }
  return [...rows.values()];
}

// Computed by hand: π/4 (0.200² - 0.110²) = 0.02191 m², 21.9 litres to the metre.
describe('the quantities', () => {
  it('set computed against poured, zone by zone', () => {
    expect(rowsOf()).toContainEqual(['sanitary seal', '0.00–2.00', '44', '–', '–', '–']);
    expect(rowsOf()).toContainEqual(['gravel pack', '2.00–10.00', '175', '200', '4', '1.14']);
  });

  it('say what the hole and the casing hold', () => {
    expect(rowsOf()).toContainEqual(['hole', '0.00–10.00', '314']);
    // π/4 · 0.100² · 6 m under the rest level.
    expect(rowsOf()).toContainEqual(['under rest level', '47']);
  });

  it('count the pieces of a string with the length of its tally', () => {
    expect(rowsOf().at(-1)).toEqual(['tally 10.40 m: 3 plain casing, 1 screen']);
  });

  it('go on on a second line where the pieces of a string are many kinds, and cut no words', () => {
    const pipe = { outside: 110, wall: 5, length: 3 };
    const kinds = ['cap', 'sump', 'screen', 'plain'] as const;
    const components = kinds.map((kind) => ({ kind, ...pipe }));
    const strings = [{ components, set: { by: 'bottom' as const, depth: 10 } }];
    const annulus = [{ from: 0, to: 9, fill: 'bentonite' as const, litres: 12345.6, sacks: 12.5 }];
    const model = resolve({ ...chapters, strings, annulus });
    const words = wordsOf(layQuantities(frenchKit, model, 84)!.draw(0, 0));
    expect(words.filter((one) => one.endsWith('…'))).toEqual([]);
    expect(words.join(' ').replaceAll('\u00a0', ' ')).toContain('1 × tube à sédiments');
    expect(words).toContain('bouchon de bentonite');
  });

  it('have a dash where a diameter is not known', () => {
    const unknown = { ...chapters, bore: { depthReached: 10 } };
    expect(rowsOf(unknown)).toContainEqual(['gravel pack', '2.00–10.00', '–', '200', '4', '–']);
  });

  it('are none where nothing is known', () => {
    expect(layQuantities(kit, resolve({ log: [{ from: 0, to: 3 }] }), 90)).toBeUndefined();
  });

  it('keep to their room, and count the zones that they leave out', () => {
    const annulus = Array.from({ length: 10 }, (_, at) => ({
      from: at,
      to: at + 1,
      fill: 'backfill' as const,
    }));
    const many = resolve({ ...chapters, annulus });
    for (const room of [40, 50, 60])
      expect(layQuantities(kit, many, 90, room)!.height).toBeLessThanOrEqual(room);
    const words = wordsOf(layQuantities(kit, many, 90, 50)!.draw(0, 0));
    const shown = words.filter((one) => one === 'backfill').length;
    expect(words).toContain(`${10 - shown} more; see the record`);
  });
});
