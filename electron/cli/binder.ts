import { mkdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type {
  BinderProgress,
  BinderWish,
  FinishedBinder,
} from '../../core/contract/binderShape.ts';
import type { Archive } from '../archive/archive.ts';
import { makeBinder } from '../binder/makeBinder.ts';
import { fileNameOf, issuedFolderName, volumeFileName } from '../binder/volumeFileName.ts';
import { readBinderWish } from './binderWish.ts';
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

/** Where the volumes go, and what they are called before their numbers. */
interface Target {
  readonly folder: string;
  readonly name: string;
}

const isFolder = (place: string) =>
  statSync(place, { throwIfNoEntry: false })?.isDirectory() ?? false;

function readTarget(given: Given, { title }: BinderWish, world: World): Result<Target> {
  const output = textOption(given, 'output');
  if (output === undefined) return misused('Say where to write: -o BINDER.pdf or a folder.');
  const place = path.resolve(world.folder, output);
  if (/[\\/]$/.test(output) || isFolder(place))
    return ok({ folder: place, name: fileNameOf(title) });
  if (path.extname(place).toLowerCase() !== '.pdf')
    return misused(`${output} is neither a folder nor ends in .pdf: say which it shall be.`);
  return ok({ folder: path.dirname(place), name: path.parse(place).name });
}

function readWorkers(given: Given): Result<1 | 2> {
  const wanted = textOption(given, 'workers') ?? '2';
  if (wanted === '1' || wanted === '2') return ok(wanted === '1' ? 1 : 2);
  return misused(`--workers is 1 or 2, not ${wanted}.`);
}

const stages = {
  lay: 'wells laid',
  plan: 'pages put in order',
  paint: 'pages painted',
  copy: 'issued papers copied',
} as const;

/** Tells each tenth of a stage in a line: a thousand lines would hide what matters. */
function teller(world: World, json: boolean): (progress: BinderProgress) => void {
  let last = '';
  return (progress) => {
    const { stage, done, of } = progress;
    const tenth = `${stage} ${of === 0 ? 10 : Math.floor((10 * done) / of)}`;
    if (tenth === last) return;
    last = tenth;
    world.progress(json ? JSON.stringify(progress) : `${done} of ${of} ${stages[stage]}`);
  };
}

function report(binder: FinishedBinder, json: boolean, world: World): ExitCode {
  const { files, pages, wells, failed, issued } = binder;
  if (json) world.give(JSON.stringify(binder));
  else {
    for (const file of files) world.print(`Written: ${file.fileName} (${file.pages} pages)`);
    if (issued) world.print(`Copied: ${issued.files} issued papers into ${issued.folder}/`);
    world.print(`${wells} wells on ${pages} pages.`);
  }
  if (!json)
    for (const { number, sentence } of failed)
      world.complain(`${number || 'A well without a number'} has no papers: ${sentence}`);
  return failed.length > 0 ? 1 : 0;
}

async function bind(archive: Archive, given: Given, world: World): Promise<Result<ExitCode>> {
  const wish = readBinderWish(given, archive, world);
  if (!wish.ok) return wish;
  const target = readTarget(given, wish.value, world);
  if (!target.ok) return target;
  const workers = readWorkers(given);
  if (!workers.ok) return workers;
  const { folder, name } = target.value;
  mkdirSync(folder, { recursive: true });
  const json = given.options['json'] === true;
  const stop = new AbortController();
  void world.asksToStop().then(() => stop.abort());
  const made = await makeBinder({
    archive,
    wish: wish.value,
    madeAt: world.now(),
    folder: path.join(folder, `.${name}.binding`),
    workers: workers.value,
    issuedFolder: path.join(folder, issuedFolderName(name)),
    fileOf: (volume, of) => path.join(folder, volumeFileName(name, volume, of)),
    onProgress: teller(world, json),
    signal: stop.signal,
  });
  return made.ok ? ok(report(made.value, json, world)) : made;
}

/** `binder`: many wells' papers in one PDF, or in volumes, with cover, contents and indexes. */
export const binder: Command = {
  name: 'binder',
  takes:
    'ARCHIVE [--name NAME|--wish FILE] [--title TEXT] [--district LIST] [--region LIST] [--search WORDS] [--papers LIST] [--paper A4|A3] [--language en|fr|pt] [--one-sided] [--attachments] [--with-issued] [--volume-pages N] [--workers 1|2] -o OUT.pdf|FOLDER/',
  says: 'Binds the papers of many wells with cover, contents, indexes and tables; a long binder becomes volumes; started again after it was stopped, it goes on; LIST of papers is some of asBuilt,layingOut,committee',
  options: {
    name: { type: 'string' },
    wish: { type: 'string' },
    title: { type: 'string' },
    district: { type: 'string' },
    region: { type: 'string' },
    search: { type: 'string' },
    papers: { type: 'string' },
    paper: { type: 'string' },
    language: { type: 'string' },
    'one-sided': { type: 'boolean' },
    attachments: { type: 'boolean' },
    'with-issued': { type: 'boolean' },
    'volume-pages': { type: 'string' },
    workers: { type: 'string' },
    output: { type: 'string', short: 'o' },
  },
  async run(given, world) {
    const word = onlyWord(given.words, 'binder');
    if (!word.ok) return word;
    const file = path.resolve(world.folder, word.value);
    const opened = openGiven(file, world);
    if (!opened.ok) return opened;
    try {
      return await bind(opened.value, given, world);
    } finally {
      opened.value.close();
    }
  },
};
