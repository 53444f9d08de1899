import { copyFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, revise, valueOf } from '../archive/sample.ts';
import { ownFolder, type } from './typed.ts';

it('borefolio merge looks, takes what needs no choice, and what a choice was given for', async () => {
  const folder = ownFolder();
  const file = (name: string) => path.join(folder, name);
  await type(folder, ['demo-archive', 'one.borefolio']);
  copyFileSync(file('one.borefolio'), file('two.borefolio'));
  for (const [name, notes] of [
    ['one', 'here'],
    ['two', 'there'],
  ] as const) {
    const archive = valueOf(openArchive(file(`${name}.borefolio`), countingWorld()));
    const [{ id } = { id: '' }] = valueOf(archive.list());
    const { document } = valueOf(archive.open(id));
    valueOf(revise(archive, id, { ...(document as object), notes }));
    archive.close();
  }
  const args = ['merge', 'one.borefolio', 'two.borefolio'];
  const looked = await type(folder, [...args, '--look']);
  expect(looked).toMatchObject({ code: 0 });
  expect(looked.out[0]).toContain('went on in both archives');
  expect(looked.out[1]).toBe('1 wells to take, 7 known already, 0 in its bin.');
  const left = await type(folder, args);
  expect(left).toMatchObject({ code: 1, out: ['0 wells added, 0 continued, 0 joined, 1 left.'] });
  const taken = await type(folder, [...args, '--apart', 'theirs', '--json']);
  expect(taken.code).toBe(0);
  expect(JSON.parse(taken.out.join('\n'))).toMatchObject({ joined: 1, left: [] });
  expect(await type(folder, args)).toMatchObject({ code: 0 });
  expect((await type(folder, ['verify', 'one.borefolio'])).code).toBe(0);
  const wrong = await type(folder, [...args, '--apart', 'both']);
  expect(wrong).toMatchObject({ code: 2, err: ['--apart takes ours or theirs, and not both.'] });
});
