import { existsSync } from 'node:fs';
import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import { backUpNow, copyChecked } from '../archive/backup.ts';
import { listBackupFiles } from '../archive/backupFiles.ts';
import { restoreBackup } from '../archive/restore.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { openGiven } from './openGiven.ts';
import { onlyWord } from './readInput.ts';

async function make(archive: Archive, given: Given, world: World): Promise<Result<ExitCode>> {
  const output = textOption(given, 'output');
  const target = output === undefined ? undefined : path.resolve(world.folder, output);
  if (target !== undefined && existsSync(target))
    return misused(`${output} is there already: choose a new name, or delete it first.`);
  const made =
    target === undefined ? await backUpNow(archive, world.now) : await copyChecked(archive, target);
  if (!made.ok) return made;
  if (given.options['json'] === true) world.give(JSON.stringify({ backup: made.value }));
  else world.print(`The backup ${made.value} was made and read back whole.`);
  return ok(0);
}

function list(file: string, json: boolean, world: World): Result<ExitCode> {
  const files = listBackupFiles(file);
  if (json) world.give(JSON.stringify(files, undefined, 2));
  else if (files.length === 0) world.print('There are no backups beside this archive.');
  else
    for (const { fileName, madeAt, wells } of files)
      world.print(
        `${fileName}  ${madeAt}  ${wells === undefined ? 'cannot be read' : `${wells} wells`}`,
      );
  return ok(0);
}

async function restore(
  archive: Archive,
  fileName: string,
  json: boolean,
  world: World,
): Promise<Result<ExitCode>> {
  const restored = await restoreBackup(archive, fileName, world);
  if (!restored.ok) return restored;
  if (json) world.give(JSON.stringify({ restored: fileName, aside: restored.value }));
  else
    world.print(
      `The archive holds again what ${fileName} holds. What it held before is put aside as ${restored.value}.`,
    );
  return ok(0);
}

/** `backup`: makes, lists and puts back copies of an archive. */
export const backup: Command = {
  name: 'backup',
  takes: 'ARCHIVE [-o FILE | --list | --restore NAME]',
  says: 'Puts a checked copy of an archive beside it or in FILE, lists the copies, or gives the archive the content of one',
  options: {
    output: { type: 'string', short: 'o' },
    list: { type: 'boolean' },
    restore: { type: 'string' },
  },
  async run(given, world) {
    const word = onlyWord(given.words, 'backup');
    if (!word.ok) return word;
    const file = path.resolve(world.folder, word.value);
    const json = given.options['json'] === true;
    // Backups are listed of a damaged archive too, which cannot be opened.
    if (given.options['list'] === true) return list(file, json, world);
    const opened = openGiven(file, world);
    if (!opened.ok) return opened;
    const fileName = textOption(given, 'restore');
    try {
      if (fileName === undefined) return await make(opened.value, given, world);
      return await restore(opened.value, fileName, json, world);
    } finally {
      opened.value.close();
    }
  },
};
