import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import type { ChainCheck } from '../archive/check.ts';
import { openArchive } from '../archive/open.ts';
import type { ExitCode, World } from './command.ts';

type Broken = ChainCheck['broken'][number] & { readonly number: string };

/** Broken links with the numbers that people know their wells by. */
function named(archive: Archive, { broken }: ChainCheck): Result<readonly Broken[]> {
  const listed = archive.list();
  if (!listed.ok) return listed;
  const numbers = new Map(listed.value.map(({ id, number }) => [id, number]));
  return ok(broken.map((link) => ({ ...link, number: numbers.get(link.id) || link.id })));
}

function say(revisions: number, broken: readonly Broken[], world: World): void {
  const [first, ...more] = broken;
  const chains = `${revisions} ${revisions === 1 ? 'revision' : 'revisions'}`;
  if (!first)
    return world.print(`The chains of hashes are whole: ${chains}, each as it was saved.`);
  world.print(`First broken link: well ${first.number}, revision ${first.revision}.`);
  world.print(first.sentence);
  for (const { number, revision } of more)
    world.print(`Broken too: well ${number}, revision ${revision}.`);
  world.print(`${broken.length} broken of ${chains}.`);
}

/** Walks the chain of hashes of every well of an archive. */
export function verifyArchive(file: string, json: boolean, world: World): Result<ExitCode> {
  const opened = openArchive(path.resolve(world.folder, file), { now: world.now, mustExist: true });
  if (!opened.ok) return opened;
  const archive = opened.value;
  try {
    const check = archive.check();
    if (!check.ok) return check;
    const broken = named(archive, check.value);
    if (!broken.ok) return broken;
    const { revisions } = check.value;
    if (json) world.print(JSON.stringify({ revisions, broken: broken.value }, undefined, 2));
    else say(revisions, broken.value, world);
    return ok(broken.value.length === 0 ? 0 : 1);
  } finally {
    archive.close();
  }
}
