import { ok, type Result } from '../../core/base/result.ts';
import { wellStates } from '../../core/record/identity.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../archive/archive.ts';
import type { SightedWell } from '../archive/tables/lists.ts';
import { misused, textOption, type Command, type Given, type World } from './command.ts';
import { openGiven } from './openGiven.ts';

/** Wells that are read from the archive at a time. */
const eachTime = 500;

const texts = {
  ...{ region: 'regions', district: 'districts', client: 'clients' },
  contractor: 'contractors',
} as const;
const amounts = {
  ...{ 'year-from': 'yearFrom', 'year-to': 'yearTo', 'depth-from': 'depthFrom' },
  ...{ 'depth-to': 'depthTo', 'yield-from': 'yieldFrom', 'yield-to': 'yieldTo' },
} as const;

function stateOf(given: Given): Result<Pick<WellFilter, 'states'>> {
  const text = textOption(given, 'state');
  if (text === undefined) return ok({});
  const state = wellStates.find((one) => one === text);
  if (state) return ok({ states: [state] });
  return misused(`There is no state ${text}. Choose one of ${wellStates.join(', ')}.`);
}

function filterOf(given: Given, words: readonly string[]): Result<WellFilter> {
  const state = stateOf(given);
  if (!state.ok) return state;
  const filter: Record<string, unknown> = { ...state.value, search: words.join(' ') };
  for (const [option, key] of Object.entries(texts)) {
    const text = textOption(given, option);
    if (text !== undefined) filter[key] = [text];
  }
  for (const [option, key] of Object.entries(amounts)) {
    const text = textOption(given, option);
    if (text === undefined) continue;
    if (!/^\d+(\.\d+)?$/.test(text))
      return misused(`--${option} takes a number, as in 12.5, and not ${text}.`);
    filter[key] = Number(text);
  }
  return ok(filter);
}

function line({ number, name, village, district, state, depthM }: SightedWell): string {
  const depth = depthM === undefined ? '' : `${depthM} m`;
  return [number || '–', name, village, district, state, depth].filter(Boolean).join('  ');
}

function printAll(archive: Archive, filter: WellFilter, json: boolean, world: World) {
  for (let from = 0; ; from += eachTime) {
    const found = archive.lists.find(filter, { by: 'number' }, { from, limit: eachTime });
    if (!found.ok) return found;
    for (const well of found.value) world.give(json ? JSON.stringify(well) : line(well));
    if (found.value.length < eachTime) return ok(0 as const);
  }
}

/** `find`: lists the wells of an archive in which every word begins a word, and that fit. */
export const find: Command = {
  name: 'find',
  takes:
    'ARCHIVE [WORD …] [--region NAME] [--district NAME] [--state STATE] [--client NAME] [--contractor NAME] [--year-from YEAR] [--year-to YEAR] [--depth-from M] [--depth-to M] [--yield-from M3H] [--yield-to M3H] [--count]',
  says: 'Lists the wells of an archive in which each word begins a word, and that fit what else is said; with --json one JSON object a line, with --count only how many',
  options: {
    ...{ region: { type: 'string' }, district: { type: 'string' }, state: { type: 'string' } },
    ...{ client: { type: 'string' }, contractor: { type: 'string' } },
    ...{ 'year-from': { type: 'string' }, 'year-to': { type: 'string' } },
    ...{ 'depth-from': { type: 'string' }, 'depth-to': { type: 'string' } },
    ...{ 'yield-from': { type: 'string' }, 'yield-to': { type: 'string' } },
    ...{ count: { type: 'boolean' } },
  },
  run(given, world) {
    const [file, ...words] = given.words;
    if (file === undefined) return misused('Say which archive: find ARCHIVE WORD.');
    const filter = filterOf(given, words);
    if (!filter.ok) return filter;
    const opened = openGiven(file, world);
    if (!opened.ok) return opened;
    const archive = opened.value;
    const json = given.options['json'] === true;
    try {
      if (given.options['count'] !== true) return printAll(archive, filter.value, json, world);
      const count = archive.lists.count(filter.value);
      if (!count.ok) return count;
      world.give(json ? JSON.stringify({ count: count.value }) : String(count.value));
      return ok(0);
    } finally {
      archive.close();
    }
  },
};
