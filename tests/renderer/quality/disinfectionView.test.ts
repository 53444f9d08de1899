// @vitest-environment jsdom
import { all, clear, click, one, openFolder, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import DisinfectionView from '../../../renderer/quality/DisinfectionView.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

/** A casing of 101.6 mm inside with 20 m of water: 162 l. */
const well: Partial<WellRecord> = {
  bore: { depthReached: 25, sections: [{ from: 0, to: 25, diameter: 165 }] },
  strings: [
    {
      set: { by: 'bottom', depth: 25 },
      components: [
        { kind: 'plain', count: 8, length: 3, outside: 110, wall: 4.2 },
        { kind: 'sump', count: 1, length: 1, outside: 110, wall: 4.2 },
        { kind: 'cap', count: 1, length: 0, outside: 110 },
      ],
    },
  ],
  levels: [{ reading: 5, datum: 'ground', state: 'static' }],
};

function lay(record: Partial<WellRecord> = well) {
  folder = openFolder(record);
  show(DisinfectionView, { folder });
}
const amount = () => texts('.amount')[0] ?? '';
async function write(label: string, text: string) {
  const found = all('label').find((each) => each.textContent.startsWith(label));
  const input = one(`[id="${(found as HTMLLabelElement).htmlFor}"]`);
  input.value = text;
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await settled();
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('a dose of chlorine', () => {
  it('is reckoned in grams and spoons', async () => {
    lay();
    await write('Available chlorine', '65');
    await write('Dose', '50');
    // Geometry: π/4 · 1.016² dm² · 200 dm = 162 l; 162 l · 50 mg/l / 65 % = 12.5 g of product.
    expect(amount()).toMatch(/^12 g of product for 162 l of water|^13 g of product for 162 l/);
    expect(texts('.work').join(' ')).toContain('level teaspoons');
  });

  it('begins with the dose and the strength of the last disinfection', () => {
    lay({ ...well, disinfection: [{ dose: 100, strength: 70 }] });
    // 162 l · 100 mg/l / 70 % = 23 g.
    expect(amount()).toMatch(/^23 g/);
  });

  it('takes bleach by millilitres, and a comma in a number', async () => {
    lay();
    one<HTMLSelectElement>('select').value = 'liquid';
    one('select').dispatchEvent(new Event('change', { bubbles: true }));
    await write('Available chlorine', '3,5');
    await write('Dose', '50');
    // 162 l · 50 mg/l = 8.1 g of chlorine; 3.5 % is 35 g in a litre: 232 ml.
    expect(amount()).toMatch(/^232 ml/);
  });

  it('says what cannot be read, and goes on with what is customary', async () => {
    lay();
    await write('Dose', 'much');
    expect(texts('.said')).toHaveLength(1);
    expect(amount()).not.toBe('');
  });

  it('always shows how chlorine is handled, and when the next sample is taken', () => {
    lay({ bore: { depthReached: 25, sections: [{ from: 0, to: 25, diameter: 165 }] } });
    expect(amount()).toBe('');
    expect(texts('.cautions li').join(' ')).toContain('Never mix it with acid');
    expect(texts('.work').join(' ')).toContain('Sample for bacteria');
  });

  it('leads to what is missing', async () => {
    lay({ ...well, levels: [] });
    await click(all('.work button').find((each) => each.textContent.includes('rest level'))!);
    expect(folder.goal?.path).toContain('levels');
  });
});
