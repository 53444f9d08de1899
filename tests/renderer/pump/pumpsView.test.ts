// @vitest-environment jsdom
import { all, clear, click, openFolder, said, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import PumpsView from '../../../renderer/pump/PumpsView.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

/** Water at 10 m in the dry season, 2 m of drawdown, 200 people, screen from 20 m to 29 m. */
const well: Partial<WellRecord> = {
  site: { users: 200, repair: 'caretaker', mains: false },
  bore: { depthReached: 30, sections: [{ from: 0, to: 30, diameter: 165 }] },
  strings: [
    {
      set: { by: 'bottom', depth: 30 },
      components: [
        { kind: 'plain', count: 7, length: 3, outside: 125, wall: 5 },
        { kind: 'screen', count: 3, length: 3, outside: 125, wall: 5, slotWidth: 0.5 },
        { kind: 'sump', count: 1, length: 1, outside: 125, wall: 5 },
        { kind: 'cap', count: 1, length: 0, outside: 125 },
      ],
    },
  ],
  levels: [{ reading: 8, datum: 'ground', state: 'static' }],
  layingOut: { rate: 1.5, drySeasonLevel: 10, drawdown: 2 },
  quality: [{ results: [{ parameter: 'pH', value: 6 }] }],
};

function lay(record: Partial<WellRecord> = well) {
  folder = openFolder(record);
  show(PumpsView, { folder });
}
const kind = (name: string) => {
  const found = all('details.kind').find((each) => each.textContent.includes(name));
  if (!found) throw new Error(`No kind ${name}`);
  return found;
};
async function opened(name: string) {
  (kind(name) as HTMLDetailsElement).open = true;
  kind(name).dispatchEvent(new Event('toggle'));
  await settled();
  return said(kind(name));
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('kinds of pump', () => {
  it('are each judged, with reasons, limits and sources', async () => {
    lay();
    expect(all('details.kind')).toHaveLength(10);
    expect(kind('suction pump').textContent).toContain('ruled out');
    // A suction pump lifts 7 m at the most (WaterAid, Handpumps, 2013).
    const told = await opened('suction pump');
    expect(told).toMatch(/Against it.*7\.00 m.*WaterAid/);
  });

  it('rust where the water is sour', async () => {
    lay();
    // Galvanised pipe not below pH 6.5 (lever handpumps of the IS 15500 family).
    expect(await opened('deepwell lever handpump, galvanised')).toMatch(/pH 6 is below 6\.5/);
    expect(kind('deepwell lever handpump, galvanised').textContent).toContain('ruled out');
  });

  it('tell where the intake hangs, what parts it takes, and each figure to its inputs', async () => {
    lay();
    const told = await opened('direct action pump');
    expect(told).toContain('plain pipe');
    expect(told).toMatch(/riser pipes: \d+ of 3\.00 m/);
    // 200 people with 20 l each, as printed for villages: 4000 l a day.
    expect(texts('.formula summary').join(' ')).toMatch(/water needed 4,?000\sl a day/);
  });

  it('say which rate they were ranked by', () => {
    lay();
    expect(texts('.how').join(' ')).toContain('the rate that was laid out for');
  });

  it('lead to what is still needed', async () => {
    lay({ ...well, site: { users: 200 } });
    await click(all('p button').find((each) => each.textContent.includes('repair'))!);
    expect(folder.goal?.path).toBe('site.repair');
  });

  it('give a solar submersible head, power and panels where the sun is known', async () => {
    lay({ ...well, site: { users: 200, repair: 'workshop', mains: false, sunHours: 5 } });
    const told = await opened('solar submersible pump');
    expect(told).toMatch(/total head/);
    expect(told).toMatch(/solar panels, peak power\s?\d+\sW/);
    expect(told).toContain('licensed electrician');
  });

  it('are none for a dry well', () => {
    lay({ ...well, identity: { state: 'dry' } });
    expect(all('details.kind')).toEqual([]);
    expect(texts('body').join(' ')).toContain('takes no pump');
  });

  it('turn to another language', async () => {
    lay();
    speech.language = 'fr';
    await settled();
    expect(texts('body').join(' ')).toContain('à écarter');
  });
});
