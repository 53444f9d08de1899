import { beforeEach, expect, it } from 'vitest';
import { usualBinder } from '../../../core/contract/usualBinder.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

let archive: Archive;
let service: Service;
const wish = usualBinder('Wells', 'fr');

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

const names = async () => valueOf(await service.call('binders.list', {})).map(({ name }) => name);

it('a binder is kept under a name, over the one that had it, until it is removed', async () => {
  valueOf(await service.call('binders.put', { name: ' Yearly ', wish }));
  const later = { ...wish, title: 'Later' };
  valueOf(await service.call('binders.put', { name: 'Yearly', wish: later }));
  expect(valueOf(await service.call('binders.list', {}))).toMatchObject([
    { name: 'Yearly', wish: later },
  ]);
  valueOf(await service.call('binders.remove', { name: 'Yearly' }));
  expect(await names()).toEqual([]);
});

it('a wish that this version does not understand is left out of the list', async () => {
  valueOf(archive.binders.put('odd', '{"title":"from a newer version"}'));
  valueOf(await service.call('binders.put', { name: 'Yearly', wish }));
  expect(await names()).toEqual(['Yearly']);
});

it('a host that makes no binders says so', async () => {
  valueOf(await service.call('binders.put', { name: 'Yearly', wish }));
  expect(await service.call('binders.start', { name: 'Yearly' })).toMatchObject({
    error: { code: 'noBinding' },
  });
  expect(valueOf(await service.call('binders.state', {}))).toEqual({ state: 'none' });
});
