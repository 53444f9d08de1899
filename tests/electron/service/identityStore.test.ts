import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  identitiesBeside,
  identitiesIn,
  passingIdentities,
  type IdentityStore,
} from '../../../electron/service/identityStore.ts';
import { freshFolder } from '../archive/sample.ts';

const identity = {
  fingerprint: Array(32).fill('A1').join(':'),
  name: 'Adéwa Tonou',
  validTo: '2030-01-01T00:00:00.000Z',
  selfSigned: true,
  file: 'AA==',
};
const other = { ...identity, fingerprint: Array(32).fill('B2').join(':'), organisation: 'Office' };

const stores: readonly (readonly [string, () => IdentityStore])[] = [
  ['on disk', () => identitiesIn(path.join(freshFolder(), 'identities'))],
  ['in memory', passingIdentities],
];

describe.each(stores)('certificates kept %s', (_, fresh) => {
  it('are listed, replaced by their fingerprint, and removed', async () => {
    const store = fresh();
    expect(await store.list()).toEqual([]);
    await store.put(identity);
    await store.put(other);
    await store.put({ ...identity, name: 'Adéwa T.' });
    expect((await store.list()).map(({ name }) => name)).toEqual(['Adéwa T.', 'Adéwa Tonou']);
    await store.remove(identity.fingerprint);
    await store.remove(identity.fingerprint);
    expect(await store.list()).toEqual([other]);
  });
});

describe('the folder of certificates', () => {
  it('lies beside the settings', () => {
    expect(identitiesBeside(path.join('home', 'settings.json'))).toBe(
      path.join('home', 'identities'),
    );
  });

  it('is for its owner alone, and a spoilt or foreign file in it hides no other', async () => {
    const folder = path.join(freshFolder(), 'identities');
    const store = identitiesIn(folder);
    await store.put(identity);
    if (process.platform !== 'win32') expect(statSync(folder).mode & 0o077).toBe(0);
    writeFileSync(path.join(folder, 'aa.identity.json'), '{"fingerprint"');
    writeFileSync(path.join(folder, 'bb.identity.json'), '{}');
    writeFileSync(path.join(folder, 'notes.txt'), '');
    mkdirSync(path.join(folder, 'cc.identity.json'));
    expect(await store.list()).toEqual([identity]);
  });
});
