// @vitest-environment jsdom
import { all, button, clear, click, one, press, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ArchiveState, WellRow } from '../../../core/contract/calls.ts';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import WellList from '../../../renderer/archive/WellList.svelte';
import { Place } from '../../../renderer/state/place.svelte.ts';

const rowOf = (id: string, parts: Partial<WellRow> = {}): WellRow => ({
  id,
  number: id,
  name: '',
  district: '',
  village: '',
  state: '',
  revision: 1,
  changedAt: '2025-03-09T07:05:00',
  ...parts,
});
const wells = [
  rowOf('T-1', { name: 'Upper', village: 'Ostra', depthM: 31.25, state: 'abandonedAndSealed' }),
  rowOf('', { id: 'T-2' }),
];

let place: Place;
let asked: [string, unknown][];
let tell: (event: HostEvent) => void;

/** The list of an archive; searching leaves the wells whose number or name holds the text. */
async function open(rows: readonly WellRow[] | string, state: Partial<ArchiveState> = {}) {
  await clear();
  asked = [];
  const found = (search = '') =>
    (rows as readonly WellRow[]).filter(({ number, name }) => `${number} ${name}`.includes(search));
  const host = {
    async send(name: string, args: { search?: string }) {
      asked.push([name, args]);
      if (name === 'archive.state')
        return { ok: true, value: { name: 'North', wells: 2, readOnly: false, ...state } };
      return name === 'wells.list' && typeof rows !== 'string'
        ? { ok: true, value: found(args.search) }
        : { ok: false, error: { code: 'damaged', sentence: String(rows) } };
    },
    onEvent(listener: typeof tell) {
      tell = listener;
      return () => undefined;
    },
  };
  place = new Place(host as unknown as PageHost);
  await place.readArchive();
  show(WellList, { place });
}

async function search(text: string) {
  one('[type=search]').value = text;
  one('[type=search]').dispatchEvent(new Event('input', { bubbles: true }));
  await settled();
}

const cells = (row: number) =>
  [...all('tbody tr')[row]!.children].map(({ textContent }) => textContent.trim());

beforeEach(async () => {
  await open(wells);
  await place.list();
  await settled();
});
afterEach(clear);

describe('the list of an archive', () => {
  it('has the archive’s name above it and says how many wells there are', () => {
    expect(texts('h1')).toEqual(['North']);
    expect(texts('[role=status]')).toEqual(['2 wells']);
  });

  it('shows a well in a row, its depth to the decimetre and its state in words', () => {
    const [number, name, village, district, state, depth, changed] = cells(0);
    expect([number, name, village, district]).toEqual(['T-1', 'Upper', 'Ostra', '']);
    expect([state, depth, changed]).toEqual(['abandoned and sealed', '31.3', '2025-03-09 07:05']);
  });

  it('leaves blank what is not known, and still gives a well without number a way in', () => {
    expect(cells(1)).toEqual(['no number', '', '', '', '', '', '2025-03-09 07:05']);
    expect(button('no number').disabled).toBe(false);
  });

  it('says that it is being read until the answer is there, not that it is empty', async () => {
    await open(wells);
    expect(texts('[role=status]')).toEqual(['Reading the archive …']);
    expect(all('.none')).toEqual([]);
  });

  it('says how to begin where there is no well yet', async () => {
    await open([]);
    await place.list();
    await settled();
    expect(texts('.none')[0]).toContain('Make the first one with “New well”.');
    expect(all('table')).toEqual([]);
  });

  it('says why it cannot be read', async () => {
    await open('The archive is damaged.');
    await place.list();
    await settled();
    expect(texts('[role=alert]')).toEqual(['The archive is damaged.']);
  });

  it('makes no new well in an archive that can only be read, and says why', async () => {
    await open(wells, { readOnly: true, sentence: 'Made by a newer version.' });
    expect(button('New well').disabled).toBe(true);
    expect(texts('[role=alert]')).toEqual(['Made by a newer version.']);
  });

  it('is read anew when a well was changed in another window', async () => {
    const before = asked.length;
    tell({ name: 'well.changed', data: { id: 'T-1', revision: 2, changedAt: '' } });
    await settled();
    expect(asked.slice(before)).toEqual([['wells.list', {}]]);
  });
});

describe('searching the list', () => {
  it('leaves the wells that fit, and counts them', async () => {
    await search('Upp');
    expect(all('tbody tr')).toHaveLength(1);
    expect(texts('[role=status]')).toEqual(['1 well']);
  });

  it('says what was looked for where nothing fits', async () => {
    await search('zzz');
    expect(texts('.none')[0]).toContain('No well fits “zzz”.');
  });

  it('asks for all again when the search is emptied, or only spaces are left', async () => {
    await search('zzz');
    await search('  ');
    expect(asked.at(-1)).toEqual(['wells.list', {}]);
    expect(all('tbody tr')).toHaveLength(2);
  });
});

describe('opening a well', () => {
  it('is done by its button, once', async () => {
    await click(button('T-1'));
    expect(asked.filter(([name]) => name === 'wells.open')).toEqual([
      ['wells.open', { id: 'T-1' }],
    ]);
  });

  it('is done anywhere on its row', async () => {
    await click(all('tbody td')[1]!);
    expect(asked.at(-1)).toEqual(['wells.open', { id: 'T-1' }]);
  });

  it('is reached by arrows, which stay at the ends', async () => {
    button('T-1').focus();
    await press('ArrowDown');
    expect(document.activeElement).toBe(button('no number'));
    await press('ArrowDown');
    expect(document.activeElement).toBe(button('no number'));
    await press('ArrowUp');
    expect(document.activeElement).toBe(button('T-1'));
  });
});
