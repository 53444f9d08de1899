// @vitest-environment jsdom
import { openFolder, settled } from '../mounted.ts';
import { expect, it } from 'vitest';
import type { PageHost } from '../../../core/contract/host.ts';
import { NewestRevision } from '../../../renderer/sheet/newestRevision.svelte.ts';

/** A host that answers one call with what it is told next, and counts how often it is asked. */
function answering() {
  const asked: unknown[] = [];
  let answer: unknown = { ok: false, error: { code: 'unreachable', sentence: '' } };
  const send = (name: string, args: unknown) => {
    asked.push([name, args]);
    return Promise.resolve(answer);
  };
  return {
    host: { send } as unknown as PageHost,
    asked,
    say: (revision: number) => {
      answer = { ok: true, value: { revision, recordHash: `hash ${revision}`, revisions: [] } };
    },
  };
}

it('what papers of the newest revision say is asked for once for each revision and language', async () => {
  const { host, asked, say } = answering();
  const folder = openFolder({});
  const newest = new NewestRevision(host, folder);
  say(1);
  expect(newest.in('en')).toBeUndefined();
  await settled();
  expect(newest.in('en')).toMatchObject({ revision: 1, recordHash: 'hash 1' });
  expect(newest.in('en')).toBeDefined();
  expect(asked).toEqual([['papers.newest', { id: 'w', language: 'en' }]]);
  expect(newest.in('fr')).toBeUndefined();
  await settled();
  expect(newest.in('fr')?.revision).toBe(1);
  folder.saving.revision = 2;
  say(2);
  // What is here of the revision before stands until the newest comes.
  expect(newest.in('fr')?.revision).toBe(1);
  await settled();
  expect(newest.in('fr')?.revision).toBe(2);
  expect(asked).toHaveLength(3);
});

it('it is asked for again where nobody answered', async () => {
  const { host, asked, say } = answering();
  const newest = new NewestRevision(host, openFolder({}));
  expect(newest.in('pt')).toBeUndefined();
  await settled();
  say(1);
  expect(newest.in('pt')).toBeUndefined();
  await settled();
  expect(newest.in('pt')?.revision).toBe(1);
  expect(asked).toHaveLength(2);
});
