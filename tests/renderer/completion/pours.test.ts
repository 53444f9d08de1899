// @vitest-environment jsdom
import { all, clear, one, openFolder, settled, show, texts, type } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import Pours from '../../../renderer/completion/Pours.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;
const well = {
  bore: { depthReached: 20, sections: [{ from: 0, to: 20, diameter: 165 }] },
  strings: [
    {
      set: { by: 'bottom' as const, depth: 20 },
      components: [{ kind: 'plain' as const, count: 7, length: 3, outside: 110, wall: 4.2 }],
    },
  ],
  annulus: [
    { from: 0, to: 3, fill: 'cementGrout' as const, sanitary: true },
    { from: 3, to: 8, fill: 'backfill' as const },
    { from: 8, to: 19, fill: 'gravelPack' as const },
    { from: 19, to: 20, fill: 'naturalCollapse' as const },
  ],
};

function lay(record: object = well) {
  folder = openFolder(record);
  show(Pours, { folder });
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('pouring as we go', () => {
  it('goes through what is poured from the bottom up, and leaves out what fell in', () => {
    lay();
    expect(texts('h3')).toEqual([
      'gravel pack 19.00 – 8.00 m',
      'backfill 8.00 – 3.00 m',
      'sanitary seal, cement grout 3.00 – 0.00 m',
    ]);
  });

  it('writes a step into its fill, and says what its sounding means', async () => {
    lay();
    await type('annulus[2].pours[0].litres', '65.3');
    await type('annulus[2].pours[0].sounded', '16.5');
    await settled();
    expect(folder.desk.record.annulus?.[2]?.pours).toEqual([{ litres: 65.3, sounded: 16.5 }]);
    // 65.3 L in a ring of 11.879 L a metre (165 and 110 mm) stand 5.5 m high, up to 13.5 m.
    const [cells] = [texts('.soundings tbody td')];
    expect(cells.slice(0, 4)).toEqual(['65', '13.50', '13.11 – 14.70', '+3.00']);
    expect(one('.says').textContent).toContain('Stands lower than expected');
  });

  it('speaks the language in use', async () => {
    lay();
    speech.language = 'fr';
    await settled();
    expect(texts('h3')[0]).toBe('massif de gravier 19,00 – 8,00 m');
    expect(all('.soundings')).toEqual([]);
  });
});
