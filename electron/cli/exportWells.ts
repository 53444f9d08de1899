import path from 'node:path';
import { statSync } from 'node:fs';
import { ok, type Result } from '../../core/base/result.ts';
import { writtenFormats, type WrittenFormat } from '../../core/exchange/writtenFormats.ts';
import { wellStates } from '../../core/record/identity.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import { exportToFolder } from '../service/exportToFolder.ts';
import type { Exported } from '../service/exportWells.ts';
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

/** Where files go and what they are called. */
interface Target {
  readonly folder: string;
  /** Without its ending; absent where the archive's own name serves. */
  readonly name?: string;
}

/** A folder is one that exists, ends in a slash or has no ending. */
function readTarget(given: string | undefined, world: World): Result<Target> {
  if (given === undefined) return misused('Say where to write: -o FOLDER, or a file in one.');
  const file = path.resolve(world.folder, given);
  const exists = statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;
  if (exists || /[\\/]$/.test(given) || path.extname(file) === '') return ok({ folder: file });
  const { dir, name } = path.parse(file);
  return ok({ folder: dir, name });
}

function readFormat(given: string | undefined): Result<WrittenFormat> {
  const format = writtenFormats.find((one) => one === given?.toLowerCase());
  if (format !== undefined) return ok(format);
  return misused(`Say in which format with -f: ${writtenFormats.join(', ')}.`);
}

function readYear(given: Given, name: string): Result<number | undefined> {
  const text = textOption(given, name);
  if (text === undefined || /^\d{1,4}$/.test(text))
    return ok(text === undefined ? undefined : Number(text));
  return misused(`--${name} ${text} is no year.`);
}

/** The filters of the list, as options. */
function readFilter(given: Given): Result<WellFilter> {
  const [yearFrom, yearTo] = [readYear(given, 'from'), readYear(given, 'to')];
  if (!yearFrom.ok) return yearFrom;
  if (!yearTo.ok) return yearTo;
  const [search, region, district, state] = ['search', 'region', 'district', 'state'].map((name) =>
    textOption(given, name),
  );
  const known = wellStates.find((one) => one === state);
  if (state !== undefined && known === undefined)
    return misused(`--state ${state} is none of ${wellStates.join(', ')}.`);
  return ok({
    ...(search === undefined ? {} : { search }),
    ...(region === undefined ? {} : { regions: [region] }),
    ...(district === undefined ? {} : { districts: [district] }),
    ...(known === undefined ? {} : { states: [known] }),
    ...(yearFrom.value === undefined ? {} : { yearFrom: yearFrom.value }),
    ...(yearTo.value === undefined ? {} : { yearTo: yearTo.value }),
  });
}

/** Kinds of loss that are named on the screen; the file names all. */
const shownLosses = 12;

function tell({ wells, unrevised, files, losses }: Exported, world: World): void {
  world.print(`${wells} wells in ${files.map(({ name }) => name).join(', ')}`);
  if (unrevised > 0)
    world.print(
      `${unrevised} of them have something typed that is in no revision and not written.`,
    );
  for (const { path: field, sentence, wells: count, first } of losses.slice(0, shownLosses))
    world.print(`  ${field || 'the whole well'}: ${sentence} (${count} wells, first ${first})`);
  if (losses.length > shownLosses)
    world.print(`  … and ${losses.length - shownLosses} more kinds of loss, in the file.`);
}

function tellAsJson({ wells, unrevised, files, losses }: Exported, world: World): void {
  const names = files.map(({ name }) => name);
  world.give(JSON.stringify({ wells, unrevised, files: names, losses }, undefined, 2));
}

async function write(given: Given, word: string, world: World): Promise<Result<ExitCode>> {
  const [format, target, filter] = [
    readFormat(textOption(given, 'format')),
    readTarget(textOption(given, 'output'), world),
    readFilter(given),
  ];
  if (!format.ok) return format;
  if (!target.ok) return target;
  if (!filter.ok) return filter;
  const file = path.resolve(world.folder, word);
  const opened = openGiven(file, world);
  if (!opened.ok) return opened;
  try {
    const name = target.value.name ?? path.parse(file).name;
    const bom = given.options['bom'] === true;
    const wish = { into: format.value, filter: filter.value, name, madeAt: world.now(), bom };
    const exported = await exportToFolder(opened.value, wish, target.value.folder);
    if (!exported.ok) return exported;
    if (given.options['json'] === true) tellAsJson(exported.value, world);
    else tell(exported.value, world);
    return ok(0);
  } finally {
    opened.value.close();
  }
}

/** `export`: the wells of an archive in an open format. */
export const exportCommand: Command = {
  name: 'export',
  takes:
    'ARCHIVE -f FORMAT -o FILE|FOLDER [--search WORDS] [--region R] [--district D] [--state S] [--from YEAR] [--to YEAR] [--bom]',
  says: `Writes the wells of an archive, or those that the filters leave, as ${writtenFormats.join(', ')}; what a format cannot hold stands in a table beside`,
  options: {
    format: { type: 'string', short: 'f' },
    output: { type: 'string', short: 'o' },
    search: { type: 'string' },
    region: { type: 'string' },
    district: { type: 'string' },
    state: { type: 'string' },
    from: { type: 'string' },
    to: { type: 'string' },
    bom: { type: 'boolean' },
  },
  run(given, world) {
    const word = onlyWord(given.words, 'export');
    return word.ok ? write(given, word.value, world) : word;
  },
};
