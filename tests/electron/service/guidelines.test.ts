import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import type { Service } from '../../../electron/service/service.ts';
import { watchArchive } from '../../../electron/service/watch.ts';
import { countingWorld, openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

/** An invented decree. */
const decree = {
  id: 'decree',
  version: '1',
  name: 'Decree on water',
  basedOn: 'who2022',
  sources: { annex: { title: 'Decree, annex 2', mark: 'read' } },
  parameters: {
    nitrate: { values: { health: { bound: 'most', value: 45, basis: 'health', source: 'annex' } } },
  },
};

let archive: Archive;
let service: Service;

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

const put = (set: object) => service.call('guidelines.put', { set });
const list = async () => valueOf(await service.call('guidelines.list', {}));

describe('a set of guideline values of the user', () => {
  it('is kept in the archive, and takes the place of the one with its id', async () => {
    valueOf(await put(decree));
    valueOf(await put({ ...decree, version: '2' }));
    archive.close();
    archive = valueOf(openArchive(archive.file, countingWorld()));
    service = freshService(archive);
    const { sets } = await list();
    expect(sets).toHaveLength(1);
    expect(sets[0]?.file).toMatchObject({
      version: '2',
      name: { en: 'Decree on water', fr: 'Decree on water', pt: 'Decree on water' },
    });
  });

  it('is refused with its faults and their places, and nothing of it is kept', async () => {
    const values = { health: { bound: 'most', value: 'much', basis: 'health', source: 'annex' } };
    expect(await put({ ...decree, parameters: { nitrate: { values } } })).toMatchObject({
      error: {
        code: 'guidelinesUnread',
        sentence: expect.stringContaining('parameters.nitrate.values.health.value: write a number'),
      },
    });
    expect(await put({ ...decree, id: 'who2022' })).toMatchObject({
      error: { code: 'guidelinesShipped' },
    });
    expect(await put({ ...decree, basedOn: 'nobody' })).toMatchObject({
      error: { code: 'guidelinesUnknown' },
    });
    expect((await list()).sets).toEqual([]);
  });

  it('goes only while none is based on it', async () => {
    valueOf(await put(decree));
    valueOf(await put({ ...decree, id: 'more', name: 'More', basedOn: 'decree' }));
    expect(await service.call('guidelines.remove', { id: 'decree' })).toMatchObject({
      error: { code: 'guidelinesInUse', sentence: expect.stringContaining('“More”') },
    });
    valueOf(await service.call('guidelines.remove', { id: 'more' }));
    valueOf(await service.call('guidelines.remove', { id: 'decree' }));
    expect((await list()).sets).toEqual([]);
  });

  it('that this version cannot read is named, and the others are there', async () => {
    valueOf(await put(decree));
    valueOf(archive.guidelines.put('later', '{"id":"later","newKey":1}'));
    const { sets, unread } = await list();
    expect(sets.map(({ file }) => file.id)).toEqual(['decree']);
    expect(unread).toMatchObject([{ id: 'later', sentence: expect.stringContaining('newKey') }]);
  });

  it('changes the paper of the wells that name it', async () => {
    const quality = [{ results: [{ parameter: 'Nitrate', value: 47, unit: 'mg/l', as: 'NO3' }] }];
    const record = { schemaVersion: 1 as const, quality, identity: { guidelines: 'decree' } };
    const { id } = valueOf(await service.call('wells.create', { record }));
    const paper = async () =>
      valueOf(await service.call('papers.asBuilt', { id, paper: 'A4' })).pdf;
    const before = await paper();
    valueOf(await put(decree));
    expect(await paper()).not.toBe(before);
    valueOf(await service.call('guidelines.remove', { id: 'decree' }));
    expect(await paper()).toBe(before);
  });

  it('is told to every page, also where another program brought it in', async () => {
    const heard: string[] = [];
    service.onEvent(({ name }) => heard.push(name));
    valueOf(await put(decree));
    expect(heard).toEqual(['guidelines.changed']);
    const look = watchArchive(archive, ({ name }) => heard.push(name));
    const theirs = valueOf(openArchive(archive.file, countingWorld()));
    valueOf(theirs.guidelines.remove('decree'));
    look();
    look();
    expect(heard).toEqual(['guidelines.changed', 'guidelines.changed']);
    theirs.close();
  });
});
