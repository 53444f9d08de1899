// @vitest-environment jsdom
import {
  all,
  clear,
  field,
  leave,
  one,
  openFolder,
  settled,
  show,
  texts,
  type,
} from '../mounted.ts';
import { press, said } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { StackBlock } from '../../../renderer/editors/chapter.ts';
import { waterBlocks } from '../../../renderer/editors/chapters/water.ts';
import EntryTable from '../../../renderer/editors/EntryTable.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

const stack = waterBlocks().find((one) => 'list' in one && one.list === 'tests') as StackBlock;
const readings = [1, 2, 4, 8, 15].map((minutes, at) => ({ minutes, reading: 10.5 + 0.1 * at }));
let folder: Folder;

async function lay(series: readonly object[], beside: object = {}) {
  await clear();
  const test = { kind: 'constantRate', datum: 'ground', restLevel: 10, rate: 2, series, ...beside };
  folder = openFolder({ tests: [test] as never });
  show(EntryTable, { folder, table: stack.table, list: 'tests[0].series' });
}

/** What a screen reader adds to a cell or a table. */
const described = (element: Element) =>
  (element.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id))
    .filter((found) => found !== null)
    .map(said);
const sentences = () => texts('.troubles .said');

beforeEach(() => lay(readings));
afterEach(async () => {
  speech.language = 'en';
  await clear();
  folder.saving.stop();
});

describe('a slip in a series of readings', () => {
  it('is said below its row and with its cell once the hand leaves that, until it is put right', async () => {
    await type('tests[0].series[2].reading', '9.7');
    expect(sentences()).toEqual([]);
    await leave();
    const sentence =
      'The level, 9.70 m, lies above the rest level of 10.00 m: the reading is not used.';
    expect(sentences()).toEqual([sentence]);
    expect(described(field('tests[0].series[2].reading'))).toEqual([sentence]);
    expect(described(field('tests[0].series[2].minutes'))).toEqual([]);
    const row = field('tests[0].series[2].reading').closest('tr')!;
    expect(said(row.nextElementSibling!)).toBe(sentence);
    await type('tests[0].series[2].reading', '10.7');
    await leave();
    expect(sentences()).toEqual([]);
    expect(all('td.found')).toEqual([]);
  });

  it('is no stop on the way with Enter', async () => {
    await type('tests[0].series[2].reading', '9.7');
    await press('Enter');
    expect(sentences()).toHaveLength(1);
    expect(document.activeElement).toBe(field('tests[0].series[2].rate'));
  });

  it('goes with its row, and with the rest level that it is compared with', async () => {
    await lay([{ minutes: 0.5, reading: 9.9 }, ...readings]);
    expect(sentences()).toHaveLength(1);
    folder.edit((desk) => {
      const [test] = desk.record.tests!;
      return { ...desk, record: { ...desk.record, tests: [{ ...test!, restLevel: 9.5 }] } };
    });
    await settled();
    expect(sentences()).toEqual([]);
  });

  it.each([
    [{ minutes: 3, reading: 11.2 }, 'The time, 3 min, is out of order: the reading is not used.'],
    [
      { minutes: 30, reading: 11.2, rate: 0 },
      'The rate is nil: it is passed over, and does not count in the rate of the test.',
    ],
  ])('is said of %o', async (slip, sentence) => {
    await lay([...readings, slip]);
    expect(sentences()).toEqual([sentence]);
  });

  it('that is no number keeps its text and its sentence, and the readings that stand', async () => {
    await type('tests[0].series[4].reading', '1o.9');
    await leave();
    expect(sentences()).toHaveLength(1);
    expect(sentences()[0]).toMatch(/^Reading.*“1o\.9” is not a number/);
    expect(field('tests[0].series[4].reading').getAttribute('aria-invalid')).toBe('true');
    expect(folder.desk.record.tests?.[0]?.series).toHaveLength(5);
  });

  it('is said in the language in use', async () => {
    await lay([{ minutes: 0.5, reading: 9.9 }, ...readings]);
    speech.language = 'fr';
    await settled();
    expect(sentences()[0]).toMatch(/^Le niveau, 9,90 m, est au-dessus du niveau statique/);
    speech.language = 'pt';
    await settled();
    expect(sentences()[0]).toMatch(/^O nível, 9,90 m, está acima do nível estático/);
  });
});

describe('what a series as a whole lacks', () => {
  it('is said at the foot of its table, and with the table', async () => {
    await lay(readings.slice(0, 2));
    const sentence = 'Readings that can be used: 2. A line with its interval takes 3 or more.';
    expect(described(one('table'))).toEqual([sentence]);
    await type('tests[0].series[2].minutes', '4');
    await type('tests[0].series[2].reading', '10.7');
    await settled();
    expect(described(one('table'))).toEqual([
      'Readings that can be used: 3. The curve takes 4 or more.',
    ]);
  });

  it('is not said of a series without readings', async () => {
    await lay([], { restLevel: undefined });
    expect(described(one('table'))).toEqual([]);
  });
});
