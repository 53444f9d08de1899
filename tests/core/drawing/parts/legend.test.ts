import { describe, expect, it } from 'vitest';
import { layLegend } from '../../../../core/drawing/parts/legend.ts';
import { resolve } from '../../model/well.ts';
import { frenchKit, kit, regionsOf, textsOf, wordsOf } from '../sample.ts';

const ground = { log: [{ from: 0, to: 9, material: 'sand' as const }] };
const shown = ['strikes', 'samples'] as const;
const legendOf = (chapters: Parameters<typeof resolve>[0], width = 90) =>
  layLegend(kit, resolve(chapters), shown, width);
const says = (chapters: Parameters<typeof resolve>[0]) =>
  wordsOf(legendOf(chapters).draw(0, 0)).slice(1);

describe('the legend', () => {
  it('holds what the sheet uses, and nothing else', () => {
    expect(says(ground)).toEqual(['sand']);
    expect(says({})).toEqual([]);
  });

  it('names each material once', () => {
    const log = [0, 3, 6].map((from) => ({ from, to: from + 3, material: 'clay' as const }));
    expect(says({ log })).toEqual(['clay']);
  });

  it('shows how mixed ground is marked, once', () => {
    const qualifiers = [{ material: 'silt' as const }];
    const log = [0, 3].map((from) => ({
      from,
      to: from + 3,
      material: 'clay' as const,
      qualifiers,
    }));
    expect(says({ log })).toEqual(['clay', 'mixed ground']);
    const hatches = regionsOf(legendOf({ log }).draw(0, 0)).map(({ hatch }) => hatch);
    expect(hatches).toEqual(['clay', 'clay+silt']);
  });

  it.each<[string, Parameters<typeof resolve>[0]]>([
    ['gradual contact', { log: [{ from: 0, to: 9, material: 'sand', boundary: 'gradual' }] }],
    ['uncertain contact', { log: [{ from: 0, to: 9, material: 'sand', boundary: 'uncertain' }] }],
    ['sample taken', { log: [{ from: 0, to: 9, material: 'sand', sampled: true }] }],
    ['water strike, rise', { ...ground, strikes: [{ depth: 4 }] }],
    ['rest water level', { ...ground, levels: [{ reading: 3, datum: 'ground' }] }],
    ['pumping level', { ...ground, levels: [{ reading: 3, datum: 'ground', state: 'pumping' }] }],
    ['pump intake', { ...ground, pump: { intake: 5 } }],
  ])('explains “%s” where the well has one', (words, chapters) => {
    expect(says(chapters)).toContain(words);
    expect(says(ground)).not.toContain(words);
  });

  it('explains what stands in the section', () => {
    const pipe = { outside: 110, wall: 4.2, length: 3 };
    const built = says({
      bore: { sections: [{ from: 0, to: 9, diameter: 200 }] },
      strings: [
        {
          components: [
            { kind: 'cap', outside: 110, length: 0.1 },
            { kind: 'screen', ...pipe },
            { kind: 'plain', ...pipe, count: 2, centralisers: [1] },
          ],
          set: { by: 'bottom', depth: 9 },
        },
      ],
      annulus: [{ from: 4, to: 9, fill: 'gravelPack' }],
    });
    for (const words of [
      'gravel pack',
      'not recorded',
      'screen, slots',
      'bottom cap',
      'centraliser',
    ])
      expect(built).toContain(words);
    expect(built).not.toContain('bentonite seal');
  });

  it('cuts no words, however its columns have to stand for them', () => {
    const materials = ['diamicton', 'sand', 'shale', 'clay', 'topsoil', 'calcrete'] as const;
    const log = materials.map((material, at) => ({ from: at, to: at + 1, material }));
    for (const width of [45, 60, 87, 94, 130]) {
      const legend = layLegend(frenchKit, resolve({ log, strikes: [{ depth: 3 }] }), shown, width);
      const texts = textsOf(legend.draw(0, 0));
      expect(texts.filter(({ text }) => text.endsWith('…'))).toEqual([]);
      expect(Math.max(...texts.map((one) => one.x + one.width))).toBeLessThanOrEqual(width);
    }
  });

  it('is as high as its entries in columns', () => {
    const log = (['clay', 'sand', 'gravel', 'peat', 'chalk', 'marl'] as const).map(
      (material, at) => ({ from: at, to: at + 1, material }),
    );
    const [narrow, wide] = [legendOf({ log }, 30), legendOf({ log }, 90)];
    expect(wide.height).toBeLessThan(narrow.height);
    const lowest = Math.max(...textsOf(narrow.draw(0, 0)).map(({ y }) => y));
    expect(lowest).toBeLessThan(narrow.height);
  });
});
