import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Answer, CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import type { HostEvent } from '../../../core/contract/events.ts';
import { readRecord } from '../../../core/record/read.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { judgedWell } from '../../../core/judging/judgedWell.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openFresh, record as sample, valueOf } from '../archive/sample.ts';
import { generatedWells } from '../archive/manyWells.ts';
import { freshService, retype } from './sample.ts';

const record = sample as unknown as WellRecord;
let service: Service;
let heard: HostEvent[];

beforeEach(() => {
  service = freshService();
  heard = [];
  service.onEvent((event) => heard.push(event));
});

async function given<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> {
  return valueOf((await service.call(name, args)) as Answer<N>) as Gives<N>;
}

async function create(parts: object = {}): Promise<string> {
  return (await given('wells.create', { record: { ...record, ...parts } })).id;
}

describe('the list', () => {
  it('knows the findings, year and place of a well that was made just now', async () => {
    await create({
      site: { ...record.site, latitude: 1.5, longitude: -6.5 },
      bore: { depthReached: 2, finishedOn: '2026-01-14' },
    });
    const { rows, total, uncounted } = await given('list.find', { filter: {} });
    expect([total, uncounted]).toEqual([1, 0]);
    expect(rows[0]).toMatchObject({ number: 'KA-012', year: 2026 });
    // The log goes down to 3 m in a hole of 2 m.
    expect(rows[0]?.findings?.errors).toBeGreaterThan(0);
    expect((await given('list.find', { filter: { findings: ['none'] } })).total).toBe(0);
  });

  it('counts the findings of the example wells as the model and the rules have them', async () => {
    const folder = path.resolve(import.meta.dirname, '../../../demo-data');
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
    const all = files.map((file) => JSON.parse(readFileSync(path.join(folder, file), 'utf8')));
    for (const one of all) await given('wells.create', { record: one as WellRecord });
    const { rows } = await given('list.find', { filter: {} });
    for (const one of all) {
      const reading = readRecord(one);
      if (reading.kind !== 'ok') throw new Error('not read');
      const model = resolveWell(reading.record);
      const judged = judgedWell(reading.record, model, practiceOf(reading.record));
      const findings = [...model.findings, ...judged.findings];
      const row = rows.find(({ number }) => number === reading.record.identity?.number);
      const { errors, warnings, notes } = row!.findings!;
      expect(errors + warnings + notes).toBe(findings.length);
      expect(errors).toBe(findings.filter(({ severity }) => severity === 'error').length);
    }
  });

  it('counts anew once a practice or a set of guideline values of the user was made or changed', async () => {
    await create();
    const uncounted = async () => (await given('list.goThrough', {})).left;
    const archive = openFresh();
    generatedWells(30).forEach((one, at) => valueOf(archive.create(String(at), one)));
    service = freshService(archive);
    while ((await uncounted()) > 0);
    const practice = { id: 'ours', version: '1', name: 'Ours', scope: 'Our wells' };
    valueOf(
      await service.call('practices.put', { practice: { ...practice, basedOn: 'handDrilled' } }),
    );
    expect((await given('list.find', { filter: {} })).uncounted).toBe(30);
    while ((await uncounted()) > 0);
    const set = { id: 'decree', version: '1', name: 'Decree', basedOn: 'who2022', parameters: {} };
    valueOf(await service.call('guidelines.put', { set }));
    expect((await given('list.find', { filter: {} })).uncounted).toBe(30);
  });

  it('follows what is typed', async () => {
    const id = await create();
    await given('list.find', { filter: {} });
    valueOf(await retype(service, id, { ...record, bore: { finishedOn: '2019-05-05' } }));
    const { rows } = await given('list.find', { filter: { yearTo: 2019 } });
    expect(rows.map((row) => row.id)).toEqual([id]);
    expect(rows[0]?.unrevised).toBe(true);
  });

  it('goes through many new wells a few at a time, and says how many are left', async () => {
    const archive = openFresh();
    generatedWells(60).forEach((one, at) => valueOf(archive.create(String(at), one)));
    service = freshService(archive);
    const { total, uncounted } = await given('list.find', { filter: {}, limit: 1 });
    expect([total, uncounted]).toEqual([60, 60]);
    const lefts: number[] = [];
    while (lefts.at(-1) !== 0) lefts.push((await given('list.goThrough', {})).left);
    expect(lefts.length).toBeGreaterThan(1);
    expect(lefts).toEqual([...lefts].sort((a, b) => b - a));
    expect((await given('list.find', { filter: {} })).uncounted).toBe(0);
  });

  it('tells in what order and page it comes, and where a well stands', async () => {
    const ids = [await create(), await create({ identity: { number: 'KA-9' } })];
    const order = { by: 'number', down: true } as const;
    const { rows } = await given('list.find', { filter: {}, order, from: 1, limit: 1 });
    expect(rows.map(({ id }) => id)).toEqual([ids[1]]);
    expect(await given('list.rank', { filter: {}, order, id: ids[1]! })).toEqual({ at: 1 });
    expect(await given('list.rank', { filter: { search: 'x' }, id: ids[1]! })).toEqual({});
  });

  it('says where a word stands that no column shows, and nothing where one does', async () => {
    await create();
    const match = async (search: string) =>
      (await given('list.find', { filter: { search } })).rows[0]?.match;
    expect(await match('ka lemo')).toBeUndefined();
    expect(await match('termi')).toEqual({ where: 'remarks', text: 'termite mound nearby' });
    expect(await match('lemo TONOU')).toEqual({ where: 'people', text: 'Adéwa Tonou' });
    expect(await match('market')).toEqual({ where: 'places', text: '… the market' });
  });

  it('names a material of the log as it was asked for, in whichever language', async () => {
    await create({ log: [{ from: 0, to: 3, material: 'sandstone' }] });
    const match = async (search: string) =>
      (await given('list.find', { filter: { search } })).rows[0]?.match;
    expect(await match('gres')).toEqual({ where: 'log', text: 'grès' });
    expect(await match('arenito')).toEqual({ where: 'log', text: 'arenito' });
    expect(await match('sandst')).toEqual({ where: 'log', text: 'sandstone' });
  });

  it('shows a few words about the one that was found', async () => {
    const remark =
      'one two three four five six seven eight nine ten eleven twelve thirteen fourteen';
    await create({ notes: remark });
    const { rows } = await given('list.find', { filter: { search: 'six' } });
    expect(rows[0]?.match?.text).toBe('… five six seven eight nine ten eleven twelve thirteen …');
  });

  it('names wells by their ids, those in the bin and those that never were left out', async () => {
    const [id, binned] = [await create(), await create()];
    await given('bin.put', { id: binned });
    expect(await given('list.named', { ids: ['nobody', id, binned] })).toEqual([
      { id, number: 'KA-012', name: 'Lémo school', village: 'Lémo' },
    ]);
  });

  it('gives a map its wells, and counts those without a position', async () => {
    await create({ site: { latitude: 1.5, longitude: -6.5 } });
    await create();
    await given('list.find', { filter: {} });
    expect(await given('list.map', { filter: {} })).toMatchObject({
      wells: [{ number: 'KA-012', latitude: 1.5, longitude: -6.5, state: 'completed' }],
      withoutPosition: 1,
      leftOut: 0,
    });
  });

  it('can be read where nothing can be written', async () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    service = freshService({ ...archive, readOnly: 'It is protected.' });
    expect(await given('list.find', { filter: {} })).toMatchObject({ total: 1, uncounted: 0 });
    expect(await given('list.goThrough', {})).toEqual({ left: 0 });
  });
});

describe('the bin', () => {
  it('takes a well, gives it back, and is emptied, and every window hears of it', async () => {
    const [a, b] = [await create(), await create({ identity: { number: 'KA-9' } })];
    heard.length = 0;
    expect(await given('bin.put', { id: a })).toEqual({ wells: 1 });
    expect(await given('bin.put', { id: b })).toEqual({ wells: 2 });
    expect(await given('bin.putBack', { id: a })).toEqual({ wells: 1 });
    expect((await given('list.find', { filter: {} })).rows.map(({ id }) => id)).toEqual([a]);
    expect((await given('bin.list', {})).map(({ id }) => id)).toEqual([b]);
    expect(await given('bin.empty', { ids: [a, b] })).toEqual({ wells: 1 });
    expect(heard.map(({ name }) => name)).toEqual(Array(4).fill('list.changed'));
    expect((await given('archive.check', {})).broken).toEqual([]);
  });

  it('refuses a well that there is not', async () => {
    const answer = await service.call('bin.put', { id: 'lost' });
    expect(answer).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(heard).toEqual([]);
  });
});

describe('backdrops', () => {
  const text = JSON.stringify({
    type: 'FeatureCollection',
    features: [
      {
        type: 'Feature',
        properties: { name: 'Kalo' },
        geometry: {
          type: 'LineString',
          coordinates: [
            [-6, 1],
            [-6.1, 1.2],
          ],
        },
      },
      { type: 'Feature', properties: {}, geometry: { type: 'Point', coordinates: [-6, 1] } },
    ],
  });

  it('are read from a file, named after it, kept and removed', async () => {
    const { backdrop, pointsLeftOut } = await given('backdrops.add', {
      fileName: 'districts 2024.geojson',
      text,
    });
    expect(pointsLeftOut).toBe(1);
    expect(backdrop).toMatchObject({ name: 'districts 2024', shapes: [{ name: 'Kalo' }] });
    expect(await given('backdrops.list', {})).toEqual([backdrop]);
    expect(await given('backdrops.remove', { id: backdrop.id })).toEqual({ left: 0 });
    expect(heard.map(({ name }) => name)).toEqual(['list.changed', 'list.changed']);
  });

  it('are refused with the file’s name and the place, and nothing is kept', async () => {
    const bad = text.replace('-6.1', '456789.1');
    const answer = await service.call('backdrops.add', { fileName: 'utm.geojson', text: bad });
    expect(answer).toMatchObject({ error: { code: 'notDegrees' } });
    if (!answer.ok)
      expect(answer.error.sentence).toMatch(
        /^utm\.geojson: features\[0\]\.geometry\.coordinates\[1\]: \[456789\.1,1\.2\]/,
      );
    expect(await given('backdrops.list', {})).toEqual([]);
  });
});
