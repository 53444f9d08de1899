import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { Service } from '../../../electron/service/service.ts';
import { watchArchive } from '../../../electron/service/watch.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

const ours = {
  id: 'ours',
  version: '1',
  name: 'Ours',
  scope: 'Our wells',
  basedOn: 'handDrilled',
  sources: { annex: { title: 'Annex 3', mark: 'read' } },
  figures: { latrineM: { value: 50, source: 'annex' } },
};

let archive: Archive;
let service: Service;

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

const put = (practice: object) => service.call('practices.put', { practice });
const list = async () => valueOf(await service.call('practices.list', {}));

describe('a practice of the user', () => {
  it('is kept in the archive, and takes the place of the one with its id', async () => {
    valueOf(await put(ours));
    valueOf(await put({ ...ours, version: '2' }));
    archive.close();
    archive = valueOf(openArchive(archive.file, countingWorld()));
    service = freshService(archive);
    const { practices } = await list();
    expect(practices).toHaveLength(1);
    expect(practices[0]?.file).toMatchObject({
      version: '2',
      name: { en: 'Ours', fr: 'Ours', pt: 'Ours' },
      figures: { latrineM: { value: 50, source: 'annex' } },
    });
  });

  it('is refused with its faults, and nothing of it is kept', async () => {
    expect(await put({ ...ours, figures: { latrin: {} } })).toMatchObject({
      error: { code: 'practiceUnread', sentence: expect.stringContaining('figures.latrin') },
    });
    expect(await put({ ...ours, id: 'machineRock' })).toMatchObject({
      error: { code: 'practiceShipped' },
    });
    expect(await put({ ...ours, basedOn: 'nobody' })).toMatchObject({
      error: { code: 'practiceUnknown' },
    });
    expect((await list()).practices).toEqual([]);
  });

  it('goes only while none is based on it', async () => {
    valueOf(await put(ours));
    valueOf(await put({ ...ours, id: 'more', name: 'More', basedOn: 'ours' }));
    expect(await service.call('practices.remove', { id: 'ours' })).toMatchObject({
      error: { code: 'practiceInUse', sentence: expect.stringContaining('“More”') },
    });
    valueOf(await service.call('practices.remove', { id: 'more' }));
    valueOf(await service.call('practices.remove', { id: 'ours' }));
    expect((await list()).practices).toEqual([]);
  });

  it('that this version cannot read is named, and the others are there', async () => {
    valueOf(await put(ours));
    valueOf(archive.practices.put('later', '{"id":"later","figures":{"newFigure":{}}}'));
    const { practices, unread } = await list();
    expect(practices.map(({ file }) => file.id)).toEqual(['ours']);
    expect(unread).toMatchObject([{ id: 'later', sentence: expect.stringContaining('newFigure') }]);
  });

  it('judges the wells that name it, on paper and in the list', async () => {
    const site = { surroundings: [{ kind: 'latrine' as const, distance: 40 }] };
    const record = { schemaVersion: 1 as const, site, identity: { practice: 'ours' } };
    const { id } = valueOf(await service.call('wells.create', { record }));
    const near = async () => {
      const { findings } = valueOf(await service.call('papers.asBuilt', { id, paper: 'A4' }));
      return findings.filter(({ code }) => code === 'near.latrine').length;
    };
    const listed = async () => {
      const { rows } = valueOf(await service.call('list.find', { filter: {} }));
      const { errors, warnings, notes } = rows[0]!.findings!;
      return errors + warnings + notes;
    };
    const before = [await near(), await listed()];
    valueOf(await put(ours));
    expect([await near(), await listed()]).toEqual([before[0]! + 1, before[1]! + 1]);
  });

  it('is told to every page, also where another program made it', async () => {
    const heard: string[] = [];
    service.onEvent(({ name }) => heard.push(name));
    valueOf(await put(ours));
    expect(heard).toEqual(['practices.changed']);
    const look = watchArchive(archive, ({ name }) => heard.push(name));
    const theirs = valueOf(openArchive(archive.file, countingWorld()));
    valueOf(theirs.practices.remove('ours'));
    look();
    look();
    expect(heard).toEqual(['practices.changed', 'practices.changed']);
    theirs.close();
  });
});
