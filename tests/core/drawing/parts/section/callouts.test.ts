import { describe, expect, it } from 'vitest';
import {
  casingCallouts,
  pieceWords,
  stretchesOf,
} from '../../../../../core/drawing/parts/section/casingCallouts.ts';
import { fillCallouts, fillWords } from '../../../../../core/drawing/parts/section/fillCallouts.ts';
import { resolve } from '../../../model/well.ts';
import { kit, viewOf } from '../../sample.ts';
import { built } from './well.ts';

const view = viewOf({ fromM: -0.6 });
const plain = (one: string) => one.replaceAll('\u00a0', ' ');

describe('the words of pieces', () => {
  it('say kind, material, size, slot and open area as far as they are known', () => {
    const { strings } = resolve({
      strings: [
        {
          components: [
            {
              kind: 'screen',
              material: 'uPVC',
              outside: 110,
              wall: 4.2,
              length: 3,
              slotWidth: 0.75,
              openArea: 7,
            },
            { kind: 'plain', length: 3 },
          ],
          set: { by: 'bottom', depth: 6 },
        },
      ],
    });
    const [upper, lower] = strings[0]!.pieces.map((piece) => plain(pieceWords(kit, piece)));
    expect(lower).toBe('screen uPVC 110 × 4.2, slot 0.75, open 7 %');
    expect(upper).toBe('plain casing');
  });

  it('are said once for neighbours that look the same', () => {
    const pipe = { kind: 'plain' as const, outside: 110, wall: 4.2, length: 3 };
    const components = [
      { ...pipe, kind: 'screen' as const },
      { ...pipe, count: 3 },
    ];
    const { strings } = resolve({ strings: [{ components, set: { by: 'bottom', depth: 12 } }] });
    const shown = stretchesOf(strings[0]!).map(({ first, count }) => [first.kind, count]);
    expect(shown).toEqual([
      ['plain', 3],
      ['screen', 1],
    ]);
  });
});

describe('the words of fills', () => {
  it('say the grain of a pack and that a seal is the sanitary one', () => {
    const { annulus } = resolve({
      bore: { sections: [{ from: 0, to: 9, diameter: 200 }] },
      annulus: [
        { from: 0, to: 3, fill: 'cementGrout', sanitary: true, insideHole: true },
        { from: 3, to: 9, fill: 'gravelPack', grainMin: 1.5, grainMax: 3, insideHole: true },
      ],
    });
    expect(annulus.map((zone) => plain(fillWords(kit, zone)))).toEqual([
      'sanitary seal, cement grout',
      'gravel pack 1.5–3 mm',
    ]);
  });
});

describe('callouts beside the section', () => {
  const figures = (all: readonly { figure?: string }[]) =>
    all.flatMap(({ figure }) => figure ?? []);

  it('name left every change of the string, the levels and the intake', () => {
    const shown = figures(casingCallouts(kit, built, view));
    expect(shown.sort()).toEqual(['0.50', '12.00', '13.90', '20.00', '4.90', '9.10'].sort());
  });

  it('name right the foot of each fill and diameter, each depth once', () => {
    expect(figures(fillCallouts(kit, built, view)).sort()).toEqual(['20.00', '3.00', '6.00']);
  });

  it('stand on the page that shows their depth', () => {
    const lower = viewOf({ fromM: 10, toM: 20, first: false });
    for (const { depthM } of [
      ...casingCallouts(kit, built, lower),
      ...fillCallouts(kit, built, lower),
    ])
      expect(depthM).toBeGreaterThan(10);
  });
});

it('day and hour of a level stay on one line', () => {
  const said = casingCallouts(kit, built, view).map(({ text }) => text);
  expect(said.some((text) => text.endsWith(', 2026-01-12\u00a008:00'))).toBe(true);
});
