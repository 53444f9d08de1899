// @vitest-environment jsdom
import { all, button, clear, click, one, press, said, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ArchiveState } from '../../../core/contract/calls.ts';
import type { ListRow } from '../../../core/contract/listShape.ts';
import ArchivePage from '../../../renderer/archive/ArchivePage.svelte';
import { speech } from '../../../renderer/state/language.svelte.ts';
import { fakeArchive, rowOf, type Answers, type FakeArchive } from './fakeArchive.ts';

const wells = [
  rowOf('T-1', {
    name: 'Upper',
    village: 'Ostra',
    district: 'Zou',
    depthM: 31.25,
    year: 2025,
    state: 'abandonedAndSealed',
    findings: { errors: 2, warnings: 1, notes: 4 },
  }),
  rowOf('T-2', { number: '', findings: { errors: 0, warnings: 0, notes: 3 } }),
];

let archive: FakeArchive;

async function open(
  rows: readonly ListRow[] = wells,
  answers: Answers = {},
  state: Partial<ArchiveState> = {},
) {
  await clear();
  archive = await fakeArchive(rows, answers, state);
  show(ArchivePage, { place: archive.place });
  await archive.place.list();
  await settled();
}

/** Types a search and waits until it was asked for. */
async function search(text: string) {
  one('[type=search]').value = text;
  one('[type=search]').dispatchEvent(new Event('input', { bubbles: true }));
  await new Promise((done) => setTimeout(done, 250));
  await settled();
}

const rows = () => all('tbody tr:not([aria-hidden])');
const cells = (row: number) => [...rows()[row]!.children].map((cell) => said(cell));
const alerts = () => texts('[role=alert]');
const finds = () => archive.callsOf('list.find').map((args) => (args as { filter: object }).filter);

beforeEach(() => open());
afterEach(async () => {
  speech.language = 'en';
  await clear();
});

describe('the list of an archive', () => {
  it('has the archive’s name above it and says how many wells there are', () => {
    expect(texts('h1')).toEqual(['North']);
    expect(texts('.count')).toEqual(['2 wells']);
  });

  it('shows a well in a row, with figures and days as the language writes them', async () => {
    expect(cells(0).slice(2, 8)).toEqual([
      'Upper',
      'Ostra',
      'Zou',
      'abandoned and sealed',
      '2025',
      '31.3',
    ]);
    expect(cells(0)[1]).toMatch(/^2 wrong, 1 to look at/);
    expect(cells(0)[8]).toBe('9 Mar 2025, 07:05');
    speech.language = 'pt';
    await settled();
    expect(cells(0)[7]).toBe('31,3');
    expect(cells(0)[8]).not.toContain('Mar ');
  });

  it('leaves blank what is not known, and still gives a well without number a way in', () => {
    expect(cells(1).slice(2, 8)).toEqual(['', '', '', '', '', '']);
    expect(cells(1)[1]).toContain('nothing');
    expect(button('no number').disabled).toBe(false);
  });

  it('says that it is being read until the answer is there, not that it is empty', async () => {
    await clear();
    archive = await fakeArchive(wells);
    show(ArchivePage, { place: archive.place });
    await settled();
    expect(texts('.count')).toEqual(['Reading the archive …']);
    expect(all('.none')).toEqual([]);
  });

  it('says how to begin where there is no well yet', async () => {
    await open([]);
    expect(texts('.none')[0]).toContain('Make the first one with “New well”.');
    expect(all('table')).toEqual([]);
  });

  it('says why it cannot be read', async () => {
    await open(wells, { 'list.find': new Error('The archive is damaged.') });
    expect(alerts()).toEqual(['The archive is damaged.']);
  });

  it('changes nothing in an archive that can only be read, and says why', async () => {
    await open(wells, {}, { readOnly: true, sentence: 'Made by a newer version.' });
    expect(alerts()).toEqual(['Made by a newer version.']);
    button('T-1').focus();
    await settled();
    for (const name of ['New well', 'New well like the last', 'Duplicate as template'])
      expect(button(name).disabled).toBe(true);
    await press('Delete');
    expect(archive.callsOf('bin.put')).toEqual([]);
    expect(button('Open').disabled).toBe(false);
  });

  it('is read anew when wells were changed or binned in another window', async () => {
    const before = finds().length;
    const data = { id: 'T-1', revision: 2, changedAt: '', edit: 1, unrevised: false };
    archive.tell({ name: 'well.changed', data });
    await settled();
    archive.tell({ name: 'list.changed', data: {} });
    await settled();
    expect(finds()).toHaveLength(before + 2);
  });

  it('has wells gone through until none is left', async () => {
    let left = 3;
    await open(wells, {
      get 'list.find'() {
        return { rows: wells, total: 2, uncounted: left };
      },
      get 'list.goThrough'() {
        left -= 1;
        return { left };
      },
    });
    await vi.waitFor(() => expect(left).toBe(0));
    await settled();
    expect(archive.callsOf('list.goThrough').length).toBeGreaterThanOrEqual(3);
    expect(texts('.count')).toEqual(['2 wells']);
  });

  it('says how many are left to be gone through', async () => {
    const answers = {
      'list.find': { rows: wells, total: 2, uncounted: 40 },
      'list.goThrough': new Error('busy'),
    };
    await open(wells, answers);
    expect(texts('.count')).toEqual(['2 wells · Going through the wells: 40 left']);
  });
});

describe('searching and filtering', () => {
  const choices = {
    regions: [{ value: 'North', wells: 2 }],
    districts: [
      { value: 'Zou', wells: 1 },
      { value: '', wells: 1 },
    ],
    states: [
      { value: 'dry', wells: 1 },
      { value: '', wells: 1 },
    ],
    years: [2019, 2026],
  };

  it('waits until the hand rests, then leaves the wells that fit, and counts them', async () => {
    const before = finds().length;
    one('[type=search]').value = 'U';
    one('[type=search]').dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
    expect(finds()).toHaveLength(before);
    await search('Upp');
    expect(finds().slice(before)).toEqual([{ search: 'Upp' }]);
    expect(rows()).toHaveLength(1);
    expect(texts('.count')).toEqual(['1 of 2 wells']);
  });

  it('says what was looked for where nothing fits, and shows all when it is emptied', async () => {
    await search('zzz');
    expect(texts('.none')[0]).toContain('No well fits “zzz”.');
    await search('  ');
    expect(finds().at(-1)).toEqual({});
    expect(rows()).toHaveLength(2);
  });

  it('shows where a word was found that no column has', async () => {
    await open([rowOf('T-1', { match: { where: 'remarks', text: 'termite mound' } })]);
    expect(all('td.match')).toEqual([]);
    await search('T');
    expect(texts('td.match')).toEqual(['remarks: termite mound']);
  });

  it('offers what there is, with its wells, and takes more than one', async () => {
    await open(wells, { 'list.choices': choices });
    expect(texts('.menu > button')).toEqual(['District ▾', 'State ▾', 'Findings ▾']);
    button('District ▾').focus();
    await click(button('District ▾'));
    expect(texts('.panel label')).toEqual(['Zou 1', 'not written 1']);
    for (const box of all('.panel input')) await click(box);
    expect(finds().at(-1)).toEqual({ districts: ['Zou', ''] });
    await press('Escape');
    expect(all('.panel')).toEqual([]);
    expect(texts('.chip')).toEqual(['District: Zou ×', 'District: not written ×']);
  });

  it('is taken away part by part, or at once', async () => {
    await open(wells, { 'list.choices': choices });
    await archive.place.wells.want({ districts: ['Zou', ''], findings: ['wrong'], yearFrom: 2020 });
    await settled();
    expect(all('.chip').map((chip) => chip.getAttribute('aria-label'))).toEqual([
      'Remove the filter District: Zou',
      'Remove the filter District: not written',
      'Remove the filter Findings: something wrong',
      'Remove the filter Year from 2020',
    ]);
    await click(all('.chip')[0]!);
    expect(finds().at(-1)).toEqual({ districts: [''], findings: ['wrong'], yearFrom: 2020 });
    await click(button('Clear all'));
    expect(finds().at(-1)).toEqual({});
    expect(all('.chip')).toEqual([]);
  });

  it('takes a year of four digits, and says how to write another text', async () => {
    const from = one('.filters input');
    const type = async (text: string) => {
      from.value = text;
      from.dispatchEvent(new Event('input', { bubbles: true }));
      await settled();
    };
    await type('202');
    expect(finds().at(-1)).toEqual({});
    await type('2024');
    expect(finds().at(-1)).toEqual({ yearFrom: 2024 });
    await type('2o24');
    expect(from.getAttribute('aria-invalid')).toBe('true');
    expect(alerts()).toEqual(['“2o24” is not a year. Write four digits, as in 2026.']);
    await type('');
    expect(finds().at(-1)).toEqual({});
  });

  it('says so where filters leave nothing', async () => {
    await open([]);
    await archive.place.wells.want({ states: ['dry'] });
    await settled();
    expect(texts('.none')[0]).toContain('No well fits all filters.');
  });
});

describe('the order of the list', () => {
  const sorted = () => all('thead th[aria-sort]').map((head) => head.getAttribute('aria-sort'));

  it('is by number at first, and by another column when its head is pressed', async () => {
    expect(sorted().slice(0, 3)).toEqual(['ascending', 'none', 'none']);
    const order = () => archive.callsOf('list.find').at(-1);
    await click(button('Depth (m)'));
    expect(order()).toMatchObject({ order: { by: 'depth', down: false } });
    expect(sorted()[0]).toBe('none');
    await click(button('Depth (m)▲'));
    expect(order()).toMatchObject({ order: { by: 'depth', down: true } });
    expect(sorted().filter((each) => each === 'descending')).toHaveLength(1);
  });
});

describe('a long list', () => {
  const many = Array.from({ length: 1000 }, (_, at) => rowOf(`W-${at}`));

  it('makes few rows, asks for the chunk that they are in, and says how many there are', async () => {
    await open(many);
    expect(rows().length).toBeLessThan(80);
    expect(one('table').getAttribute('aria-rowcount')).toBe('1001');
    expect(archive.callsOf('list.find')).toHaveLength(1);
  });

  it('brings the last row when a key asks for it', async () => {
    await open(many);
    button('W-0').focus();
    await press('End');
    expect(one<HTMLElement>('.rows').scrollTop).toBeGreaterThan(30_000);
    await settled();
    expect(archive.place.wells.row(999)?.number).toBe('W-999');
    expect(all('[aria-rowindex="1001"]')).toHaveLength(1);
  });
});

describe('opening a well', () => {
  it('is done by its button, once', async () => {
    await open(wells, { 'wells.open': new Error('It is gone.') });
    await click(button('T-1'));
    expect(archive.callsOf('wells.open')).toEqual([{ id: 'T-1' }]);
    expect(alerts()).toEqual(['It is gone.']);
  });

  it('is done by two clicks on its row; one chooses it', async () => {
    await open(wells, { 'wells.open': new Error('It is gone.') });
    await click(rows()[1]!);
    expect(archive.place.wells.chosen).toBe('T-2');
    expect(rows()[1]!.getAttribute('aria-selected')).toBe('true');
    expect(archive.callsOf('wells.open')).toEqual([]);
    rows()[1]!.dispatchEvent(new MouseEvent('dblclick', { bubbles: true }));
    await settled();
    expect(archive.callsOf('wells.open')).toEqual([{ id: 'T-2' }]);
  });

  it('is reached by arrows from the search on, which stay at the ends', async () => {
    one('[type=search]').focus();
    await press('ArrowDown');
    expect(document.activeElement).toBe(button('T-1'));
    await press('ArrowDown');
    expect(document.activeElement).toBe(button('no number'));
    await press('ArrowDown');
    expect(document.activeElement).toBe(button('no number'));
    await press('ArrowUp');
    expect(document.activeElement).toBe(button('T-1'));
    expect(archive.place.wells.chosen).toBe('T-1');
  });
});

describe('templates', () => {
  const identity = { number: 'T-1', client: 'District' };
  const record = { schemaVersion: 1, identity, bore: { method: 'percussion', depthReached: 30 } };
  const taken = {
    schemaVersion: 1,
    identity: { client: 'District' },
    bore: { method: 'percussion' },
  };
  const answers = {
    'wells.desk': { desk: { record, typed: {} }, edit: 0 },
    'wells.create': new Error('Stop here.'),
  };

  it('are made of the chosen well, by button and by key', async () => {
    await open(wells, answers);
    expect(button('Duplicate as template').disabled).toBe(true);
    button('T-1').focus();
    await settled();
    await click(button('Duplicate as template'));
    expect(archive.callsOf('wells.create')).toEqual([{ record: taken }]);
    button('T-1').focus();
    expect(await press('d', { ctrlKey: true })).toBe(false);
    expect(archive.callsOf('wells.create')).toHaveLength(2);
  });

  it('are made of the well that was changed last, whatever is chosen', async () => {
    await open(wells, answers);
    await click(button('New well like the last'));
    expect(archive.callsOf('list.find').at(-1)).toEqual({
      filter: {},
      order: { by: 'changed', down: true },
      limit: 1,
    });
    expect(archive.callsOf('wells.desk')).toEqual([{ id: 'T-1' }]);
    expect(archive.callsOf('wells.create')).toEqual([{ record: taken }]);
  });

  it('of nothing make an empty well', async () => {
    await open([], answers);
    await click(button('New well like the last'));
    expect(archive.callsOf('wells.create')).toEqual([{ record: { schemaVersion: 1 } }]);
  });
});

describe('the bin', () => {
  const place = { village: '', district: '' };
  const binned = [
    { id: 'T-9', number: 'T-9', name: 'Old', ...place, revisions: 3, binnedAt: '2025-03-09' },
  ];
  const moves = { 'bin.put': { wells: 1 }, 'bin.putBack': { wells: 0 } };

  beforeEach(() => {
    // The test's window knows no dialogs that lie over the page.
    HTMLDialogElement.prototype.showModal = function () {
      this.open = true;
    };
    HTMLDialogElement.prototype.close = function () {
      this.open = false;
      this.dispatchEvent(new Event('close'));
    };
  });

  async function binFirst() {
    button('T-1').focus();
    await press('Delete');
  }

  it('takes the chosen well without a question, and gives it back from the message', async () => {
    await open(wells, moves);
    await binFirst();
    expect(archive.callsOf('bin.put')).toEqual([{ id: 'T-1' }]);
    expect(texts('.done span')).toEqual(['T-1 was moved to the bin.']);
    await click(button('Put back'));
    expect(archive.callsOf('bin.putBack')).toEqual([{ id: 'T-1' }]);
    expect(texts('.done span')).toEqual(['T-1 was put back.']);
    await click(button('×'));
    expect(all('.done')).toEqual([]);
  });

  it('gives the last one back by the key for undo', async () => {
    await open(wells, moves);
    await binFirst();
    await press('z', { ctrlKey: true });
    expect(archive.callsOf('bin.putBack')).toEqual([{ id: 'T-1' }]);
  });

  it('says why a well was not taken', async () => {
    await open(wells, { 'bin.put': new Error('The disk is full.') });
    await binFirst();
    expect(alerts()).toEqual(['The disk is full.']);
    expect(all('.done')).toEqual([]);
  });

  it('shows what lies in it, and is emptied once it was agreed to', async () => {
    await open(wells, { 'bin.list': binned, 'bin.empty': { wells: 1 } });
    await click(button('Bin (1)'));
    await settled();
    expect(texts('.bin tbody th')).toEqual(['T-9']);
    await click(button('Empty the bin …'));
    expect(said(one('dialog'))).toContain('One well goes for good, with all its revisions (3).');
    await click(button('Keep them'));
    expect(all('dialog')).toEqual([]);
    expect(archive.callsOf('bin.empty')).toEqual([]);
    await click(button('Empty the bin …'));
    await click(button('Empty the bin'));
    expect(archive.callsOf('bin.empty')).toEqual([{ ids: ['T-9'] }]);
    expect(texts('.done span')).toEqual(['One well is gone for good.']);
  });

  it('gives one well back from its view, and leads back to the list', async () => {
    await open(wells, { 'bin.list': binned, ...moves });
    await click(button('Bin (1)'));
    await settled();
    await click(button('Put back'));
    expect(archive.callsOf('bin.putBack')).toEqual([{ id: 'T-9' }]);
    await click(button('‹ Back to the wells'));
    expect(all('[type=search]')).toHaveLength(1);
  });

  it('says when it is empty', async () => {
    await click(button('Bin (0)'));
    await settled();
    expect(texts('.none')).toEqual(['The bin is empty.']);
    expect(button('Empty the bin …').disabled).toBe(true);
  });
});
