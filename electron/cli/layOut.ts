import path from 'node:path';
import type { Language } from '../../core/base/language.ts';
import { formatDepth } from '../../core/base/numbers.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { layOut as layOutWell } from '../../core/layingOut/layOut.ts';
import type { LaidOut, Proposal, TallyLine } from '../../core/layingOut/proposal.ts';
import { layingOutWords, sayObstacle, sayWhy } from '../../core/layingOut/sayLayingOut.ts';
import { takeProposal } from '../../core/layingOut/takeProposal.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../core/practice/catalogue.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { proposalKinds } from '../../core/record/layingOut.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { replaceFile } from '../files/replaceFile.ts';
import { misused, textOption, type Command, type ExitCode, type World } from './command.ts';
import { practiceNamed } from './practiceNamed.ts';
import { onlyWord, readRecordFile } from './readInput.ts';

const language: Language = 'en';

function cells(line: TallyLine): string[] {
  const { number, kind, pipe, cutToM, lengthM, topM, bottomM } = line;
  return [
    String(number),
    layingOutWords(language).pieces[kind],
    pipe === undefined ? '' : `pipes[${pipe}]`,
    formatDepth(lengthM),
    formatDepth(topM),
    formatDepth(bottomM),
    cutToM === undefined ? '' : `cut to ${formatDepth(cutToM)}`,
  ];
}

/** Columns as wide as their widest cell, two spaces apart. */
function table(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, at) => Math.max(...rows.map((row) => row[at]!.length)));
  return rows.map((row) =>
    row
      .map((cell, at) => cell.padEnd(widths[at]!))
      .join('  ')
      .trimEnd(),
  );
}

function printProposal(proposal: Proposal, { print }: World) {
  const { kind, tally, annulus, cuts, screenM, findings } = proposal;
  const { kinds } = layingOutWords(language);
  const { words } = catalogueOf(language);
  const cut = `${cuts} ${cuts === 1 ? 'cut' : 'cuts'}`;
  print(`${kinds[kind]} (${kind}): ${formatDepth(screenM)} m of screen, ${cut}`);
  print(sayWhy(proposal, language));
  const head = ['no.', 'piece', 'from', 'length m', 'top m', 'bottom m', ''];
  for (const line of table([head, ...tally.map(cells)])) print(`  ${line}`);
  for (const { from, to, fill } of annulus)
    print(`  ${formatDepth(from)}–${formatDepth(to)} m ${words[fill]}`);
  for (const finding of findings)
    print(`  ${finding.severity}: ${sayFinding(finding, language).sentence}`);
  print('');
}

function printTables({ proposals, missing, obstacles }: LaidOut, world: World) {
  const words = layingOutWords(language);
  for (const { what, path: where, stops } of missing)
    world.print(`${stops ? 'needed ' : 'lacking'}  ${where}: ${words.missing[what]}`);
  for (const obstacle of obstacles) world.print(`limit    ${sayObstacle(obstacle, language)}`);
  for (const proposal of proposals) printProposal(proposal, world);
  if (proposals.length === 0) world.print('No completion can be laid out.');
}

/** A record with the practice that it is laid out by. */
interface Site {
  readonly record: WellRecord;
  readonly practice: Practice;
}

/** What `--take KIND -o FILE` asks for. */
interface Taking {
  readonly kind: string;
  readonly output: string;
}

function readTaking(
  kind: string | undefined,
  output: string | undefined,
): Result<Taking | undefined> {
  if (kind === undefined && output === undefined) return ok(undefined);
  if (kind === undefined) return misused('Say which proposal to write: --take KIND.');
  if (!proposalKinds.some((one) => one === kind))
    return misused(`There is no kind ${kind}: --take ${proposalKinds.join(', ')}.`);
  if (output === undefined) return misused('Say where to write the record: -o FILE.json.');
  return ok({ kind, output });
}

/** Writes the record with the wanted proposal taken; a file that is there stays whole till then. */
async function write(
  { record, practice }: Site,
  { proposals }: LaidOut,
  { kind, output }: Taking,
  world: World,
): Promise<Result<ExitCode>> {
  const proposal = proposals.find((one) => one.kind === kind);
  if (!proposal) {
    const there = proposals.map((one) => one.kind).join(', ') || 'none';
    return refused('noSuchProposal', `No proposal here is ${kind}; there are: ${there}.`);
  }
  const day = world.now().slice(0, 'YYYY-MM-DD'.length);
  const taken = takeProposal(record, proposal, day, practice);
  try {
    await replaceFile(path.resolve(world.folder, output), `${JSON.stringify(taken, null, 2)}\n`);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused('unwritable', `${output} could not be written (${code}): check the place.`);
  }
  world.report({ written: output, taken: kind }, `Written: ${output}`);
  return ok(0);
}

/** `lay-out`: proposes completions from the log, the levels, the hole and the pipes on site. */
export const layOut: Command = {
  name: 'lay-out',
  takes: 'RECORD.json [--practice ID] [--take KIND -o FILE.json]',
  says: 'Proposes completions, each with its tally; --take writes the record with one taken',
  options: {
    practice: { type: 'string' },
    take: { type: 'string' },
    output: { type: 'string', short: 'o' },
  },
  async run(given, world) {
    const file = onlyWord(given.words, 'lay-out');
    if (!file.ok) return file;
    const taking = readTaking(textOption(given, 'take'), textOption(given, 'output'));
    if (!taking.ok) return taking;
    const read = readRecordFile(file.value, world);
    if (!read.ok) return read;
    const { record } = read.value;
    const named = textOption(given, 'practice');
    const practice = named === undefined ? ok(practiceOf(record)) : practiceNamed(named, world);
    if (!practice.ok) return practice;
    const laidOut = layOutWell(record, resolveWell(record), practice.value);
    if (taking.value)
      return write({ record, practice: practice.value }, laidOut, taking.value, world);
    if (given.options['json'] === true) world.give(JSON.stringify(laidOut, null, 2));
    else printTables(laidOut, world);
    return ok(laidOut.proposals.length > 0 ? 0 : 1);
  },
};
