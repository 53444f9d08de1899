import { describe, expect, it } from 'vitest';
import type { Component } from '../../../../core/record/strings.ts';
import { missingOf, off, reckon, those, valueOf, type Chapters } from '../reckoned.ts';

const size = { outside: 110, wall: 4.2 } as const;
const pipe = { ...size, material: 'uPVC', length: 3, joint: 'glued bell' } as const;

function string(...components: Component[]): Chapters {
  return { strings: [{ set: { by: 'bottom', depth: 20 }, components }] };
}

describe('pipes', () => {
  // ISO 1452 and DIN 4925 sizes; kilograms a metre by 1400 kg/m³ (from memory), computed apart.
  const pvc = [
    [110, 3.4, 1.59],
    [110, 4.2, 1.95],
    [110, 5.3, 2.44],
    [125, 6.0, 3.14],
    [160, 7.7, 5.16],
    [113, 5.0, 2.38],
    [165, 7.5, 5.2],
  ] as const;

  it.each(pvc)('of PVC of %f × %f mm weigh %f kg a metre', (outside, wall, kgPerM) => {
    const reckoned = reckon(string({ ...pipe, kind: 'plain', outside, wall, count: 4 }));
    expect(off(valueOf(reckoned, 'pipesKg')! / 12, kgPerM)).toBeLessThan(0.005);
  });

  it('of steel of 273 × 7.1 mm weigh 46.6 kg a metre', () => {
    // EN 10220 (from memory).
    const steel = { kind: 'plain', outside: 273, wall: 7.1, length: 6, material: 'acier' } as const;
    expect(off(valueOf(reckon(string(steel)), 'pipesKg')! / 6, 46.6)).toBeLessThan(0.005);
  });

  it('are counted by kind and size, whole and cut ones together', () => {
    const reckoned = reckon(
      string(
        { ...pipe, kind: 'sump', length: 1.5 },
        { ...pipe, kind: 'screen', count: 2 },
        { ...pipe, kind: 'plain', count: 4 },
        { ...pipe, kind: 'plain', length: 2.2 },
      ),
    );
    expect(those(reckoned, 'pipeCount').map(({ pipe, value }) => [pipe?.kind, value])).toEqual([
      ['sump', 1],
      ['screen', 2],
      ['plain', 5],
    ]);
    expect(those(reckoned, 'pipeM').map(({ value }) => Number(value.toFixed(6)))).toEqual([
      1.5, 6, 14.2,
    ]);
    expect(valueOf(reckoned, 'pipesM')).toBeCloseTo(21.7, 6);
    expect(valueOf(reckoned, 'pipesCount')).toBe(8);
    expect(valueOf(reckoned, 'joints')).toBe(7);
    // 7 joints of 60 g (trade data, from memory).
    expect(valueOf(reckoned, 'glueG')).toBe(420);
  });

  it('have a joint more with a cap that has no length', () => {
    const reckoned = reckon(
      string({ kind: 'cap', joint: 'glued' }, { ...pipe, kind: 'plain', count: 3 }),
    );
    expect(valueOf(reckoned, 'joints')).toBe(3);
    expect(those(reckoned, 'pipeCount').map(({ pipe }) => pipe?.kind)).toEqual(['plain', 'cap']);
  });

  it.each(['threaded', 'fileté', 'roscado'])('that are %s take no glue', (joint) => {
    const reckoned = reckon(string({ ...pipe, joint, kind: 'plain', count: 3 }));
    expect(those(reckoned, 'glueG')).toEqual([]);
    expect(missingOf(reckoned, 'pipes')).toEqual([]);
  });

  it.each(['solvent cement', 'emboîture collée', 'campânula colada'])('with a %s do', (joint) => {
    const reckoned = reckon(string({ ...pipe, joint, kind: 'plain', count: 3 }));
    expect(valueOf(reckoned, 'glueG')).toBe(120);
  });

  it('whose joint nobody wrote leave the glue unknown', () => {
    const unsaid = { ...size, kind: 'plain', material: 'uPVC', length: 3, count: 3 } as const;
    const reckoned = reckon(string(unsaid));
    expect(those(reckoned, 'glueG')).toEqual([]);
    expect(missingOf(reckoned, 'pipes')).toEqual([
      { what: 'joint', path: 'strings[0].components[0].joint' },
    ]);
  });

  it('without a length are missed, and leave no whole', () => {
    const reckoned = reckon(
      string({ ...pipe, kind: 'plain', count: 3 }, { ...size, kind: 'screen' }),
    );
    expect(those(reckoned, 'pipesM')).toEqual([]);
    expect(missingOf(reckoned, 'pipes')).toContainEqual({
      what: 'pipeLength',
      path: 'strings[0].components[1].length',
    });
  });

  it('of no told material have no mass', () => {
    const reckoned = reckon(string({ ...size, kind: 'plain', length: 3 }));
    expect(those(reckoned, 'pipesKg')).toEqual([]);
    expect(valueOf(reckoned, 'pipesM')).toBe(3);
    expect(missingOf(reckoned, 'pipes')).toContainEqual({
      what: 'pipeMaterial',
      path: 'strings[0].components[0].material',
    });
  });
});

describe('centralisers', () => {
  const plain = { ...pipe, kind: 'plain', count: 6 } as const;

  it('are those recorded', () => {
    const reckoned = reckon(string({ ...plain, centralisers: [1.5] }));
    expect(valueOf(reckoned, 'centralisers')).toBe(6);
  });

  it('of a plan without them stand as close as the practice asks', () => {
    // 18 m of casing below ground, one every 6 m.
    expect(valueOf(reckon(string(plain)), 'centralisers')).toBe(3);
  });

  it('of a built well are unknown where none is recorded', () => {
    const reckoned = reckon({ ...string(plain), identity: { state: 'completed' } });
    expect(those(reckoned, 'centralisers')).toEqual([]);
    expect(missingOf(reckoned, 'pipes')).toContainEqual({ what: 'centralisers', path: 'strings' });
  });
});
