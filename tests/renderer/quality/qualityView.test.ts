// @vitest-environment jsdom
import { all, clear, click, openFolder, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import { readGuidelines } from '../../../core/water/guidelines/readGuidelines.ts';
import QualityView from '../../../renderer/quality/QualityView.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

type Sample = NonNullable<WellRecord['quality']>[number];
type Result = NonNullable<Sample['results']>[number];

function lay(...samples: readonly (readonly Result[])[]) {
  const quality = samples.map((results, at) => ({
    takenAt: `2025-0${at + 1}-10T08:00+00:00`,
    results: [...results],
  }));
  folder = openFolder({ quality });
  show(QualityView, { folder });
}

/** The cells of a row of the table, by the parameter's name. */
function row(name: string): string[] {
  const found = all('tbody tr').find((one) => one.textContent.trim().startsWith(name));
  if (!found) throw new Error(`No row ${name}`);
  return [...found.children].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim());
}
const shown = () => texts('body').join(' ');
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('samples beside guideline values', () => {
  it('tell health and taste apart', () => {
    // WHO 2022, from memory: manganese 0.08 mg/l for health (provisional), 0.1 mg/l for stains.
    lay([{ parameter: 'Manganese', value: 0.09, unit: 'mg/l' }]);
    const [, found, health, use] = row('manganese');
    expect(found).toContain('0.09');
    expect(health).toMatch(/^above the value.*0\.08.*provisional/);
    expect(use).toMatch(/^within the value.*0\.1/);
  });

  it('convert what was written, and show it', () => {
    // 11.3 mg/l as N is 50 mg/l as NO3 (atomic masses; WHO, chemical fact sheet on nitrate).
    lay([{ parameter: 'Nitrate', value: 12, unit: 'mg/l', as: 'N' }]);
    const [, found, health] = row('nitrate');
    expect(found).toMatch(/^53\.1\smg\/l\sNO3 written: 12\smg\/l\sN/);
    expect(health).toContain('above the value');
  });

  it('stand beside the set that the record names', () => {
    // Nitrate 50 mg/l (WHO values as quoted by FAO, y4263e, annex 3); the 45 is invented.
    const read = readGuidelines({
      id: 'decree',
      version: '3',
      name: 'Decree on water',
      basedOn: 'who2022',
      sources: { decree: { title: 'Decree, annex 2', mark: 'read' } },
      parameters: {
        nitrate: {
          values: { health: { bound: 'most', value: 45, basis: 'health', source: 'decree' } },
        },
      },
    });
    if (!read.ok) throw new Error(read.error.sentence);
    const results = [
      { parameter: 'Nitrate', value: 47, unit: 'mg/l', as: 'NO3' },
      { parameter: 'Arsenic', value: 0.02, unit: 'mg/l' },
    ];
    const layNamed = (guidelines?: string) => {
      const named = guidelines === undefined ? {} : { identity: { guidelines } };
      folder = openFolder({ ...named, quality: [{ results }] }, false, undefined, () => [
        read.value,
      ]);
      show(QualityView, { folder });
    };
    layNamed();
    expect(row('nitrate')[2]).toMatch(/^within the value.*50/);
    document.body.replaceChildren();
    layNamed('decree');
    expect(row('nitrate')[2]).toMatch(/^above the value.*45/);
    expect(row('arsenic')[2]).toContain('above the value');
    expect(shown()).toContain('Guideline set: Decree on water, version 3');
    expect(texts('.sources').join()).toContain('Decree, annex 2');
    document.body.replaceChildren();
    layNamed('lost');
    expect(row('nitrate')[2]).toMatch(/^within the value.*50/);
    expect(shown()).toContain('The record names the set “lost”, which is not here');
  });

  it('say where a detection limit is too high to say', () => {
    // WHO 2022, from memory: arsenic 0.01 mg/l.
    lay([{ parameter: 'Arsenic', value: 0.05, unit: 'mg/l', below: true }]);
    expect(row('arsenic')[2]).toContain('detection limit too high to say');
  });

  it('never call water safe, and leave the verdict to the health authority', async () => {
    lay([{ parameter: 'E. coli', value: 0, unit: 'CFU/100 ml' }]);
    expect(shown()).toContain('the health authority decides');
    for (const language of ['en', 'fr', 'pt'] as const) {
      speech.language = language;
      await settled();
      expect(shown()).not.toMatch(/\bsafe\b|potab|potáv/i);
    }
  });

  it('name first what stands past a value, and what handover still asks for', () => {
    lay([{ parameter: 'Iron', value: 0.62, unit: 'mg/l' }]);
    const said = texts('p').join(' ');
    expect(said).toMatch(/value of taste or use: iron/);
    expect(said).toMatch(/before handover, and not tested: E\. coli/);
  });

  it('go by the last of repeated samples, and tell where it went', () => {
    lay(
      [{ parameter: 'Fluoride', value: 0.8, unit: 'mg/l' }],
      [{ parameter: 'Fluoride', value: 1.2, unit: 'mg/l' }],
      [{ parameter: 'Fluoride', value: 1.8, unit: 'mg/l' }],
    );
    const [, found, health] = row('fluoride');
    expect(found).toMatch(/^1\.8.*0\.8\smg\/l\sF to 1\.8\smg\/l\sF, 3 samples.*each time/);
    expect(health).toContain('above the value');
  });

  it('open what was reckoned, and lead to what the set does not know', async () => {
    lay([
      { parameter: 'Calcium', value: 40, unit: 'mg/l' },
      { parameter: 'Magnesium', value: 10, unit: 'mg/l' },
      { parameter: 'Colour of the lid', value: 3 },
    ]);
    // APHA 2340 B (from memory): 2.497 Ca + 4.118 Mg = 141 mg/l as CaCO3.
    const line = all('.formula summary').find((one) => one.textContent.includes('hardness'))!;
    expect(line.textContent).toMatch(/141\smg\/l/);
    await click(line);
    expect(line.parentElement!.textContent).toContain('APHA');
    await click(all('button').find((one) => one.textContent.includes('Colour of the lid'))!);
    expect(folder.goal?.path).toMatch(/^quality\[0\]\.results\[2\]/);
  });
});
