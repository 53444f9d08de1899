// @vitest-environment jsdom
import { all, button, clear, click, one, openFolder, said, settled, show } from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import ReadingsFromFile from '../../../renderer/editors/ReadingsFromFile.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

let folder: Folder;
const list = 'tests[0].series';
const series = [{ minutes: 1, reading: 10.5 }];
const tape = 'minutes;level\n0;10,27\n1;10,90\n2;11,02\n';
/** A sensor that hangs deeper: 1 kPa less is 0.102 m of water less over it. */
const sensor = 'time,pressure\n2025-11-18 06:29,50.0\n2025-11-18 06:31,45.0\nend,x\n';

function lay(standing: object[] = []) {
  folder = openFolder({
    tests: [{ kind: 'constantRate', restLevel: 10.27, series: standing }],
  } as never);
  show(ReadingsFromFile, { folder, list });
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

async function open(text: string) {
  const picker = one('input[type=file]');
  Object.defineProperty(picker, 'files', {
    value: [{ text: () => Promise.resolve(text) }],
    configurable: true,
  });
  picker.dispatchEvent(new Event('change', { bubbles: true }));
  await settled();
}

async function choose(id: string, value: string) {
  const field = one<HTMLSelectElement>(`[id$="-${id}"]`);
  field.value = value;
  field.dispatchEvent(new Event('change', { bubbles: true }));
  await settled();
}

describe('readings from a logger’s file', () => {
  it('are taken into an empty series, in one step of undo', async () => {
    lay();
    await open(tape);
    expect(said(document.body)).toContain('3 readings, from 10.27 to 11.02 m');
    await click(button('Take these readings'));
    expect(folder.desk.record.tests?.[0]?.series).toEqual([
      { minutes: 0, reading: 10.27 },
      { minutes: 1, reading: 10.9 },
      { minutes: 2, reading: 11.02 },
    ]);
    folder.undo();
    expect(folder.desk.record.tests?.[0]?.series).toEqual([]);
  });

  it('replace what stands there only when asked', async () => {
    lay(series);
    await open(tape);
    await click(button('Take these readings'));
    expect(folder.desk.record.tests?.[0]?.series).toEqual(series);
    expect(said(one('[role=alertdialog]'))).toContain('Replace the 1 that stand here?');
    await click(button('Keep what is there'));
    expect(folder.desk.record.tests?.[0]?.series).toEqual(series);
    await click(button('Take these readings'));
    await click(button('Replace'));
    expect(folder.desk.record.tests?.[0]?.series).toHaveLength(3);
  });

  it('of a sensor are brought to the tape, and to the start of the test', async () => {
    lay();
    await open(sensor);
    await choose('shows', 'kPa');
    await choose('firstMinute', '-1');
    expect(said(document.body)).toContain('1 line could not be read');
    await click(button('Take these readings'));
    // 5 kPa are 0.51 m of water (1 kPa = 0.101972 m of water of 1000 kg/m³); 10.27 m at rest.
    expect(folder.desk.record.tests?.[0]?.series).toEqual([{ minutes: 1, reading: 10.78 }]);
  });

  it('are thinned out where there are many, unless all are wanted', async () => {
    lay();
    // A fall of 0.2 m over a log cycle, read each ten seconds of ten hours, and a step of a metre in it.
    const rows = Array.from({ length: 3600 }, (_, at) => {
      const minutes = (at + 1) / 6;
      return `${minutes},${10.3 + 0.2 * Math.log10(minutes + 1) + (minutes > 300 ? 1 : 0)}`;
    });
    await open(`minutes,level\n${rows.join('\n')}\n`);
    expect(said(document.body)).toContain('Thin out the 3600 readings');
    await click(button('Take these readings'));
    const { series: kept = [] } = folder.desk.record.tests![0]!;
    expect(kept.length).toBeGreaterThan(80);
    expect(kept.length).toBeLessThan(300);
    expect(kept.at(-1)!.minutes).toBe(600);
    expect(kept.some(({ minutes }) => minutes > 300 && minutes < 300.3)).toBe(true);

    await open(`minutes,level\n${rows.join('\n')}\n`);
    await click(one('.thin input'));
    await click(button('Take these readings'));
    await click(button('Replace'));
    expect(folder.desk.record.tests![0]!.series).toHaveLength(3600);
  });

  it('are not to be had from a file without any', async () => {
    lay();
    await open('hello');
    expect(said(document.body)).toContain('No readings were found in the file.');
    expect(all('[role=group]')).toEqual([]);
  });
});
