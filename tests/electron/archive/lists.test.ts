import { beforeEach, describe, expect, it } from 'vitest';
import type { ListOrder, WellFilter } from '../../../core/record/wellFilter.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import { generatedWells, goThroughAll, saidCount, wellLike } from './manyWells.ts';
import { openFresh, retype, valueOf } from './sample.ts';

let archive: Archive;

const wells: Record<string, object> = {
  a: wellLike('KB-10', {
    site: { region: 'North', district: 'Zou', village: 'Ostra', latitude: 1.5, longitude: -6.5 },
    bore: {
      ...{ startedOn: '2024-12-30', finishedOn: '2025-01-02', depthReached: 30 },
      method: 'mudRotary',
    },
    tests: [{ rate: 3.5 }, { rate: 2, series: [{ rate: 9 }] }],
    pump: { kind: 'suction' },
    said: { errors: 2, warnings: 1 },
  }),
  b: wellLike('KB-2', {
    identity: { number: 'KB-2', state: 'dry', supervisor: 'Adéwa Tonou' },
    site: { region: 'South', district: 'Kalo', village: 'Lémo', latitude: 1.4 },
    bore: { startedOn: '2023-05-01', depthReached: 9, method: 'mudRotary' },
    strikes: [{ flow: 0.5 }, { flow: 0.7 }],
    said: { warnings: 3 },
  }),
  c: wellLike('KB-1', {
    identity: { number: 'KB-1', state: 'completed', name: 'École', client: 'Water office' },
    log: [{ material: 'laterite', colour: 'red brown' }, { material: 'sand' }],
    site: { district: 'Kalo', village: 'Nalvo', latitude: 1.6, longitude: -6.4 },
    notes: 'termite mound',
    said: { notes: 4 },
  }),
  d: { schemaVersion: 1 },
};

beforeEach(() => {
  archive = openFresh();
  for (const [id, record] of Object.entries(wells)) valueOf(archive.create(id, record));
  goThroughAll(archive);
});

const byNumber: ListOrder = { by: 'number' };

function found(filter: WellFilter, order = byNumber, from = 0, limit = 100): string {
  const rows = valueOf(archive.lists.find(filter, order, { from, limit }));
  return rows.map(({ id }) => id).join('');
}

describe('a list of wells', () => {
  it('is in the order of the numbers as people count them, the nameless last', () => {
    expect(found({})).toBe('cbad');
    expect(found({}, { by: 'number', down: true })).toBe('abcd');
  });

  it.each([
    ['name', 'cbad', 'cbad'],
    ['village', 'bcad', 'acbd'],
    ['district', 'cbad', 'abcd'],
    ['state', 'cbad', 'bcad'],
    ['year', 'bacd', 'abcd'],
    ['depth', 'bacd', 'abcd'],
    ['findings', 'dcba', 'abcd'],
    ['changed', 'abcd', 'dcba'],
  ] as const)('by %s is %s up and %s down; what is not known comes last', (by, up, down) => {
    expect(found({}, { by })).toBe(up);
    expect(found({}, { by, down: true })).toBe(down);
  });

  it('says of a well what its columns show', () => {
    const [row] = valueOf(archive.lists.find({ search: 'KB-10' }, byNumber, { from: 0, limit: 1 }));
    expect(row).toMatchObject({
      id: 'a',
      region: 'North',
      district: 'Zou',
      year: 2025,
      depthM: 30,
      findings: { errors: 2, warnings: 1, notes: 0 },
    });
  });

  it('comes in pages, and tells where a well stands', () => {
    expect(found({}, byNumber, 1, 2)).toBe('ba');
    expect(found({}, byNumber, 4, 2)).toBe('');
    const rank = (id: string, filter: WellFilter = {}) =>
      valueOf(archive.lists.rank(filter, byNumber, id));
    expect(['c', 'b', 'a', 'd'].map((id) => rank(id))).toEqual([0, 1, 2, 3]);
    expect(rank('a', { districts: ['Kalo'] })).toBeUndefined();
  });
});

describe('a filter', () => {
  const cases: [WellFilter, string][] = [
    [{ search: 'tonou' }, 'b'],
    [{ search: 'termite' }, 'c'],
    [{ search: '   ' }, 'cbad'],
    [{ search: '***' }, ''],
    [{ districts: ['Kalo'] }, 'cb'],
    [{ districts: ['Kalo', 'Zou'] }, 'cba'],
    [{ districts: [''] }, 'd'],
    [{ regions: ['North'] }, 'a'],
    [{ states: ['dry', 'completed'] }, 'cb'],
    [{ states: [''] }, 'ad'],
    [{ yearFrom: 2024 }, 'a'],
    [{ yearFrom: 2023, yearTo: 2025 }, 'ba'],
    [{ yearTo: 2023 }, 'b'],
    [{ findings: ['wrong'] }, 'a'],
    [{ findings: ['look'] }, 'b'],
    [{ findings: ['none'] }, 'cd'],
    [{ findings: ['wrong', 'look'] }, 'ba'],
    [{ search: 'laterite brown' }, 'c'],
    [{ depthFrom: 9, depthTo: 29.9 }, 'b'],
    [{ depthTo: 100 }, 'ba'],
    [{ yieldFrom: 3.5 }, 'a'],
    [{ yieldTo: 1.2 }, 'b'],
    [{ yieldFrom: 0 }, 'ba'],
    [{ methods: ['mudRotary'], depthFrom: 20 }, 'a'],
    [{ pumps: ['suction', ''] }, 'cbad'],
    [{ pumps: ['suction'] }, 'a'],
    [{ clients: ['Water office'] }, 'c'],
    [{ contractors: ['Nobody'] }, ''],
    [{ districts: [] as string[], states: [] }, 'cbad'],
    [{ search: 'kb', districts: ['Kalo'], states: ['dry'] }, 'b'],
    [{ districts: ["Kalo') OR 1 --"] }, ''],
  ];

  it.each(cases)('%j leaves %s, and as many are counted', (filter, ids) => {
    expect(found(filter)).toBe(ids);
    expect(valueOf(archive.lists.count(filter))).toBe(ids.length);
  });

  it('has its values and years from the wells that there are', () => {
    expect(valueOf(archive.lists.values())).toEqual({
      regions: [
        { value: 'North', wells: 1 },
        { value: 'South', wells: 1 },
        { value: '', wells: 2 },
      ],
      districts: [
        { value: 'Kalo', wells: 2 },
        { value: 'Zou', wells: 1 },
        { value: '', wells: 1 },
      ],
      states: [
        { value: 'completed', wells: 1 },
        { value: 'dry', wells: 1 },
        { value: '', wells: 2 },
      ],
      methods: [
        { value: 'mudRotary', wells: 2 },
        { value: '', wells: 2 },
      ],
      pumps: [
        { value: 'suction', wells: 1 },
        { value: '', wells: 3 },
      ],
      clients: [
        { value: 'Water office', wells: 1 },
        { value: '', wells: 3 },
      ],
      contractors: [{ value: '', wells: 4 }],
      years: [2023, 2025],
    });
    const empty = openFresh();
    expect(valueOf(empty.lists.values())).toEqual({
      ...{ regions: [], districts: [], states: [], methods: [], pumps: [] },
      ...{ clients: [], contractors: [] },
    });
  });
});

describe('a map of wells', () => {
  it('has those with both coordinates, by number, up to as many as are wanted', () => {
    const place = (most: number, filter: WellFilter = {}) =>
      valueOf(archive.lists.place(filter, most));
    expect(place(10).wells.map(({ id }) => id)).toEqual(['c', 'a']);
    expect(place(10).wells[1]).toEqual({
      id: 'a',
      number: 'KB-10',
      name: '',
      village: 'Ostra',
      state: '',
      latitude: 1.5,
      longitude: -6.5,
    });
    expect(place(1)).toMatchObject({ placed: 2, wells: [{ id: 'c' }] });
    expect(place(10, { districts: ['Zou'] }).placed).toBe(1);
  });
});

describe('going through the wells', () => {
  it('is done for a well once, and again after each change of it', () => {
    expect(valueOf(archive.lists.uncounted(saidCount.number))).toBe(0);
    valueOf(retype(archive, 'b', { ...wells['b'], said: { errors: 5 } }));
    expect(valueOf(archive.lists.uncounted(saidCount.number))).toBe(1);
    const [row] = valueOf(archive.lists.find({ search: 'KB-2' }, byNumber, { from: 0, limit: 9 }));
    expect(row?.findings).toBeUndefined();
    goThroughAll(archive);
    expect(found({ findings: ['wrong'] })).toBe('ba');
  });

  it('sees what is being typed, not only what was saved', () => {
    valueOf(retype(archive, 'd', { schemaVersion: 1, bore: { finishedOn: '2019-02-03' } }));
    goThroughAll(archive);
    expect(found({ yearTo: 2019 })).toBe('d');
    expect(valueOf(archive.revisions('d'))).toHaveLength(1);
  });

  it('is done anew by a program that counts otherwise; until then the old count is shown', () => {
    expect(valueOf(archive.lists.uncounted(8))).toBe(4);
    expect(found({ findings: ['wrong'] })).toBe('a');
    valueOf(archive.lists.goThrough({ ...saidCount, number: 8 }, 3));
    expect(valueOf(archive.lists.uncounted(8))).toBe(1);
  });

  it('leaves all as it was where one of them cannot be counted', () => {
    const failing = {
      number: 9,
      count: () => {
        throw new Error('inside');
      },
    };
    expect(() => archive.lists.goThrough(failing, 9)).toThrow('inside');
    expect(valueOf(archive.lists.uncounted(saidCount.number))).toBe(0);
  });

  it('takes records in any condition', () => {
    const odd = { site: { latitude: '1.5', longitude: 400 }, bore: { finishedOn: 2020 } };
    valueOf(archive.create('odd', odd));
    valueOf(archive.create('far', { site: { latitude: 95, longitude: 4 }, bore: [] }));
    goThroughAll(archive);
    expect(valueOf(archive.lists.place({}, 99)).placed).toBe(2);
    expect(found({ yearTo: 9999 })).toBe('ba');
  });
});

describe('five hundred wells', () => {
  it('are found, sorted and mapped as a plain search through all of them has it', () => {
    const all = generatedWells(500) as {
      identity: { number: string };
      site: { district: string };
      bore: { depthReached: number; finishedOn: string };
      said: { errors: number };
    }[];
    archive = openFresh();
    all.forEach((record, at) => valueOf(archive.create(String(at), record)));
    goThroughAll(archive);
    const filter: WellFilter = {
      districts: ['District 3', 'District 17'],
      yearFrom: 2023,
      findings: ['wrong'],
    };
    const fitting = all.filter(
      ({ site, bore, said }) =>
        ['District 3', 'District 17'].includes(site.district) &&
        bore.finishedOn >= '2023' &&
        said.errors > 0,
    );
    expect(valueOf(archive.lists.count(filter))).toBe(fitting.length);
    const page = { from: 2, limit: 4 };
    const rows = valueOf(archive.lists.find(filter, { by: 'depth', down: true }, page));
    const depths = fitting.map(({ bore }) => bore.depthReached).sort((a, b) => b - a);
    expect(rows.map(({ depthM }) => depthM)).toEqual(depths.slice(2, 6));
    expect(valueOf(archive.lists.place({}, 100))).toMatchObject({ placed: 500 });
  });
});
