import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { wellChoices, type WellChoice } from '../../core/contract/importsShape.ts';
import { readMapping, type TableMapping } from '../../core/exchange/index.ts';
import type { GivenFile } from '../../core/exchange/incoming.ts';
import { fitMapping } from '../../core/exchange/proposal/fitMapping.ts';
import { proposeMapping } from '../../core/exchange/proposal/propose.ts';
import type { PlanKind } from '../../core/exchange/plan.ts';
import type { TableTrouble } from '../../core/exchange/tables/trouble.ts';
import type { Archive } from '../archive/archive.ts';
import { comingOf, openFiles, type OpenedFiles } from '../service/importing/openFiles.ts';
import {
  bringPlanned,
  countPlans,
  planAll,
  type PlannedWell,
} from '../service/importing/planned.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { openGiven } from './openGiven.ts';
import { parseJson, readBytes, textOf } from './readInput.ts';

function filesOf(names: readonly string[], world: World): Result<readonly GivenFile[]> {
  const files: GivenFile[] = [];
  for (const name of names) {
    const bytes = readBytes(name, world);
    if (!bytes.ok) return bytes;
    files.push({ name: path.basename(name), bytes: bytes.value });
  }
  return ok(files);
}

/** The mapping that was named, or the one that the tables' headings speak for. */
function mappingFor(
  file: string | undefined,
  { tables }: OpenedFiles,
  world: World,
): Result<TableMapping | undefined> {
  if (file === undefined) {
    const proposed = proposeMapping(tables);
    if (proposed !== undefined || tables.length === 0) return ok(proposed);
    const names = tables.map(({ name }) => name).join(', ');
    return refused(
      'noMapping',
      `The headings of ${names} say neither which well a row belongs to nor what it is. ` +
        'Name a mapping: --mapping FILE.',
    );
  }
  const bytes = readBytes(file, world);
  if (!bytes.ok) return bytes;
  const json = parseJson(textOf(bytes.value), file);
  const mapping = json.ok ? readMapping(json.value) : json;
  // Another delivery of the same form has other names of files.
  return mapping.ok ? ok(fitMapping(mapping.value, tables) ?? mapping.value) : mapping;
}

const kinds: Readonly<Record<PlanKind, string>> = {
  new: 'new',
  same: 'known already',
  changed: 'known with other content',
  alike: 'with the number of a well that is there',
};

const sayTrouble = ({ file, line, column, sentence }: TableTrouble) =>
  `${file}:${line}${column ? ` ${column}` : ''}: ${sentence}`;

/** A plan as JSON for programs. */
function planJson(planned: readonly PlannedWell[], troubles: readonly TableTrouble[]) {
  return {
    counts: countPlans(planned),
    wells: planned.map(({ kind, id, well }) => ({
      ...{ kind, number: well.record.identity?.number ?? '', file: well.file, line: well.line },
      ...(id === undefined ? {} : { id }),
    })),
    troubles,
  };
}

interface Job {
  readonly given: Given;
  readonly world: World;
  readonly choice: WellChoice;
}

async function bring(
  archive: Archive,
  planned: readonly PlannedWell[],
  { given, world, choice }: Job,
): Promise<Result<string>> {
  const stop = new AbortController();
  void world.asksToStop().then(() => stop.abort());
  const brought = await bringPlanned(archive, planned, () => choice, {
    newId: world.newId,
    signal: stop.signal,
    author: textOption(given, 'author') ?? '',
    reason: textOption(given, 'reason') ?? '',
  });
  if (!brought.ok) return brought;
  const { created, revised } = brought.value;
  return ok(`${created} wells added, ${revised} revised.`);
}

async function importInto(
  archive: Archive,
  opened: OpenedFiles,
  mapping: TableMapping | undefined,
  job: Job,
): Promise<Result<ExitCode>> {
  const { given, world, choice } = job;
  const { wells, troubles } = comingOf(opened, mapping);
  const planned = await planAll(archive, wells);
  if (!planned.ok) return planned;
  const json = given.options['json'] === true;
  const { print } = world;
  for (const trouble of troubles) if (!json) world.complain(sayTrouble(trouble));
  const counts = countPlans(planned.value);
  for (const kind of ['new', 'same', 'changed', 'alike'] as const)
    if (counts[kind] > 0) print(`${counts[kind]} wells ${kinds[kind]}.`);
  if (json) world.give(JSON.stringify(planJson(planned.value, troubles), undefined, 2));
  const left = choice === 'leave' ? counts.changed + counts.alike : 0;
  if (given.options['dry-run'] !== true) {
    const done = await bring(archive, planned.value, job);
    if (!done.ok) return done;
    print(done.value);
    if (left > 0) print(`${left} wells left as they are; see --known.`);
  }
  const lost = troubles.some(({ kept }) => !kept);
  return ok(lost || left > 0 ? 1 : 0);
}

/** `import`: wells from files of any kind that is known into an archive, all or nothing. */
export const importFiles: Command = {
  name: 'import',
  takes:
    'ARCHIVE FILE … [--mapping FILE] [--dry-run] [--known leave|revise|add] [--author NAME] [--reason TEXT]',
  says: 'Brings wells from tables, workbooks and other formats into an archive; 1 where a row or a well was left',
  options: {
    mapping: { type: 'string' },
    'dry-run': { type: 'boolean' },
    known: { type: 'string' },
    author: { type: 'string' },
    reason: { type: 'string' },
  },
  async run(given, world) {
    const [name, ...names] = given.words;
    if (name === undefined || names.length === 0)
      return misused('Name an archive and one or more files: import ARCHIVE FILE ….');
    const said = textOption(given, 'known') ?? 'leave';
    const choice = wellChoices.find((one) => one === said);
    if (choice === undefined)
      return misused(`--known takes ${wellChoices.join(', ')}, and not ${said}.`);
    const files = filesOf(names, world);
    if (!files.ok) return files;
    const opened = await openFiles(files.value);
    const mapping = mappingFor(textOption(given, 'mapping'), opened, world);
    if (!mapping.ok) return mapping;
    const mustExist = given.options['dry-run'] === true;
    const archive = openGiven(name, world, mustExist);
    if (!archive.ok) return archive;
    try {
      return await importInto(archive.value, opened, mapping.value, { given, world, choice });
    } finally {
      archive.value.close();
    }
  },
};
