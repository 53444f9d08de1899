// @vitest-environment jsdom
import { all, clear, click, openFolder, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import QuantitiesView from '../../../renderer/completion/QuantitiesView.svelte';
import type { PracticeFile } from '../../../core/practice/practice.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

/** The reference table's hole of 150 mm with pipe of 110 mm over 10 m: 81.68 L, computed there. */
const well: Partial<WellRecord> = {
  bore: { depthReached: 10, sections: [{ from: 0, to: 10, diameter: 150 }] },
  strings: [
    {
      set: { by: 'bottom', depth: 10 },
      components: [{ kind: 'plain', count: 4, length: 3, outside: 110, wall: 4.2 }],
    },
  ],
  annulus: [{ from: 0, to: 10, fill: 'gravelPack' }],
};

function lay(record: Partial<WellRecord> = well) {
  folder = openFolder(record);
  show(QuantitiesView, { folder });
}
const line = (words: string) => {
  const found = all('summary').find((each) => each.textContent.includes(words));
  if (!found) throw new Error(`No quantity ${words}`);
  return found;
};
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('the quantities', () => {
  it('are opened to their formula, their inputs and their sources', async () => {
    lay();
    // 2.61 sacks of 50 kg without surplus (reference table), 3.14 with 20 %: four are bought.
    expect(line('sacks of gravel').textContent).toMatch(/4\ssacks/);
    await click(line('gravel with the extra'));
    const opened = line('gravel with the extra').parentElement!.textContent;
    expect(opened).toMatch(/=\s*0\.2/);
    expect(opened).toMatch(/handbooks of well construction \(from memory/);
  });

  it('leave out totals that would only repeat their one zone', async () => {
    lay();
    expect(texts('summary').filter((text) => text.includes('sacks of gravel'))).toHaveLength(1);
    await clear();
    lay({
      ...well,
      annulus: [
        { from: 0, to: 4, fill: 'gravelPack' },
        { from: 4, to: 6, fill: 'claySeal' },
        { from: 6, to: 10, fill: 'gravelPack' },
      ],
    });
    expect(texts('summary').filter((text) => text.includes('sacks of gravel'))).toHaveLength(3);
  });

  it('say what is not known for want of what, and lead there', async () => {
    lay({ ...well, bore: { depthReached: 10 } });
    const [button] = all('.missing button').filter((one) =>
      one.textContent.includes('diameter of the hole'),
    );
    await click(button!);
    expect(folder.goal?.path).toContain('bore');
  });

  it('name the practice, in the language in use', async () => {
    lay();
    speech.language = 'pt';
    await settled();
    expect(texts('.how')[0]).toContain('Geral: furos manuais de pequeno diâmetro, 1.0');
    expect(texts('h4')[1]).not.toBe('Gravel');
  });

  it('cost what the practice says, and name what has no price', () => {
    const words = { en: 'Ours', fr: 'Nôtre', pt: 'Nossa' };
    const own: PracticeFile = {
      id: 'ours',
      version: '1',
      name: words,
      scope: words,
      basedOn: 'handDrilled',
      sources: {},
      figures: {},
      currency: 'TVL',
      prices: { gravelSack: { each: 12.5, per: 'sack' } },
    };
    folder = openFolder({ ...well, identity: { practice: 'ours' } }, false, () => [own]);
    show(QuantitiesView, { folder });
    expect(texts('tr').join(' ')).toContain('50 TVL');
    expect(texts('.missing').join(' ')).toContain('metre of plain pipe');
  });
});
