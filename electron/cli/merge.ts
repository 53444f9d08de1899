import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import type { MergeDone, MergeSight } from '../archive/merge/merge.ts';
import type { MergeStep } from '../archive/merge/plan.ts';
import { mergeChoices, type MergeChoice, type MergeChoices } from '../archive/merge/take.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { openGiven } from './openGiven.ts';

/** What stands for every well of a kind that has to be chosen. */
interface Wish {
  readonly apart?: MergeChoice;
  readonly alike?: MergeChoice;
}

function wishOf(given: Given): Result<Wish> {
  const wish: { apart?: MergeChoice; alike?: MergeChoice } = {};
  for (const [kind, allowed] of [
    ['apart', ['ours', 'theirs']],
    ['alike', mergeChoices],
  ] as const) {
    const said = textOption(given, kind);
    if (said === undefined) continue;
    const choice = allowed.find((one) => one === said);
    if (choice === undefined)
      return misused(`--${kind} takes ${allowed.join(' or ')}, and not ${said}.`);
    wish[kind] = choice;
  }
  return ok(wish);
}

function choicesOf({ steps }: MergeSight, wish: Wish): MergeChoices {
  return Object.fromEntries(
    steps.flatMap(({ kind, id }) => {
      const choice = kind === 'apart' || kind === 'alike' ? wish[kind] : undefined;
      return choice === undefined ? [] : [[id, choice]];
    }),
  );
}

const waits: Readonly<Record<MergeStep['kind'], string>> = {
  new: 'is new here',
  later: 'has later revisions',
  apart: 'went on in both archives: choose with --apart ours or theirs which record stands last',
  alike: 'has the number and place of a well here: choose with --alike ours, theirs or two',
  typing: 'is being worked on here: save it first, then merge again',
};

function called({ wells }: Pick<MergeSight, 'wells'>, id: string): string {
  return wells[id]?.number || id;
}

function sayLook(sight: MergeSight, world: World): void {
  const { steps, known, binned } = sight;
  for (const { id, kind } of steps) world.print(`${called(sight, id)} ${waits[kind]}.`);
  world.print(`${steps.length} wells to take, ${known} known already, ${binned} in its bin.`);
}

function sayDone(done: MergeDone, world: World): void {
  const { added, continued, joined, left, differing } = done;
  for (const { id, kind } of left) world.complain(`${called(done, id)} ${waits[kind]}.`);
  for (const id of differing)
    world.complain(`${id} stands otherwise in the other archive; what is here was left.`);
  world.print(
    `${added} wells added, ${continued} continued, ${joined} joined, ${left.length} left.`,
  );
}

function mergeInto(archive: Archive, other: string, given: Given, world: World): Result<ExitCode> {
  const wish = wishOf(given);
  if (!wish.ok) return wish;
  const sight = archive.merging.look(other);
  if (!sight.ok) return sight;
  const json = given.options['json'] === true;
  if (given.options['look'] === true) {
    if (json) world.give(JSON.stringify(sight.value, undefined, 2));
    else sayLook(sight.value, world);
    return ok(0);
  }
  const said = { author: textOption(given, 'author') ?? '', name: path.parse(other).name };
  const done = archive.merging.take(other, choicesOf(sight.value, wish.value), said);
  if (!done.ok) return done;
  if (json) world.give(JSON.stringify(done.value, undefined, 2));
  else sayDone(done.value, world);
  return ok(done.value.left.length + done.value.differing.length === 0 ? 0 : 1);
}

/** `merge`: another archive's wells into one. */
export const merge: Command = {
  name: 'merge',
  takes: 'ARCHIVE OTHER [--look] [--apart ours|theirs] [--alike ours|theirs|two] [--author NAME]',
  says: 'Takes the wells of another archive in, with all their revisions; 1 where some wait for a choice',
  options: {
    look: { type: 'boolean' },
    apart: { type: 'string' },
    alike: { type: 'string' },
    author: { type: 'string' },
  },
  run(given, world) {
    const [file, other, ...more] = given.words;
    if (file === undefined || other === undefined || more.length > 0)
      return misused('Name two archives: merge ARCHIVE OTHER.');
    const place = (name: string) => path.resolve(world.folder, name);
    const opened = openGiven(file, world);
    if (!opened.ok) return opened;
    try {
      return mergeInto(opened.value, place(other), given, world);
    } finally {
      opened.value.close();
    }
  },
};
