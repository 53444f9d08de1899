import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import { misused, type Command, type World } from './command.ts';
import { openGiven } from './openGiven.ts';
import { demoData } from './places.ts';
import { onlyWord, parseJson } from './readInput.ts';

/** Fills a new archive with the demo wells; gives their number. */
export function makeDemoArchive(file: string, world: World): Result<number> {
  const opened = openGiven(file, world, false);
  if (!opened.ok) return opened;
  const archive = opened.value;
  try {
    const names = readdirSync(demoData).filter((name) => name.endsWith('.json'));
    for (const name of names.sort()) {
      const json = parseJson(readFileSync(path.join(demoData, name), 'utf8'), name);
      if (!json.ok) return json;
      const created = archive.create(demoId(json.value) ?? world.newId(), json.value);
      if (!created.ok) return created;
    }
    return archive.count();
  } finally {
    archive.close();
  }
}

function demoId(document: unknown): string | undefined {
  return (document as { identity?: { id?: string } }).identity?.id;
}

/** `demo-archive`: a new archive with wells of an invented district. */
export const demoArchive: Command = {
  name: 'demo-archive',
  takes: 'FILE.borefolio',
  says: 'Makes a new archive with wells of an invented district',
  options: {},
  run({ words }, world) {
    const file = onlyWord(words, 'demo-archive');
    if (!file.ok) return file;
    const target = path.resolve(world.folder, file.value);
    if (existsSync(target))
      return misused(`${file.value} is there already: choose a new name, or delete it first.`);
    const made = makeDemoArchive(target, world);
    if (!made.ok) return made;
    world.report(
      { written: file.value, wells: made.value },
      `${file.value} holds ${made.value} demo wells.`,
    );
    return ok(0);
  },
};
