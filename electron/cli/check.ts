import { ok, type Result } from '../../core/base/result.ts';
import type { Finding } from '../../core/base/finding.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../core/practice/catalogue.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import { judgedWell } from '../../core/judging/judgedWell.ts';
import type { Judgement } from '../../core/practice/judgeWell.ts';
import { missingOf } from '../../core/practice/missingOf.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { isOfPractice, saySource } from '../../core/practice/saySource.ts';
import { contradictionsOf, troublesOf } from '../../core/record/consistency.ts';
import type { ReadRecord } from '../../core/record/read.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { textOption, type Command, type Given, type World } from './command.ts';
import { hasErrors } from './recordErrors.ts';
import { onlyWord, readRecordFile } from './readInput.ts';
import { practiceNamed } from './practiceNamed.ts';

const order = ['error', 'warning', 'note'] as const;

/** A record with all that is found about it. */
interface Checked {
  readonly read: ReadRecord;
  readonly findings: readonly Finding[];
  readonly judgement: Judgement;
}

function countOf(
  severities: readonly Finding['severity'][],
  severity: Finding['severity'],
): string {
  const count = severities.filter((one) => one === severity).length;
  return `${count} ${severity}${count === 1 ? '' : 's'}`;
}

function sayLine(finding: Finding, practice: Practice): string {
  const { sentence, todo } = sayFinding(finding);
  const source = isOfPractice(finding) ? ` [${saySource(finding, practice, 'en')}]` : '';
  return `${finding.path || 'record'}: ${sentence} ${todo}${source}`;
}

/** Reversed ranges are said as contradictions, with both fields by name. */
function isSaidByPath(code: string): boolean {
  return code.endsWith('.reversed');
}

/** What a record contradicts itself in beside its findings is as bad as an error among them. */
function printLines({ read, findings, judgement }: Checked, world: World) {
  const { practice } = judgement;
  const contradictions = contradictionsOf(read);
  for (const { sentence } of read.troubles) world.print(`unread   ${sentence}`);
  for (const { sentence } of contradictions) world.print(`error    ${sentence}`);
  for (const severity of order)
    for (const finding of findings.filter((one) => one.severity === severity))
      world.print(`${severity.padEnd(8)} ${sayLine(finding, practice)}`);
  const { missing } = catalogueOf('en');
  for (const { what, path } of missingOf(judgement))
    world.print(`unjudged ${path || 'record'}: for want of ${missing[what]}`);
  world.print(`Judged by: ${practice.name.en} ${practice.version} (${practice.id})`);
  const severities = [
    ...contradictions.map(() => 'error' as const),
    ...findings.map(({ severity }) => severity),
  ];
  const counts = order.map((severity) => countOf(severities, severity)).join(', ');
  world.print(`${read.troubles.length} not readable; ${counts}`);
}

function printJson({ read, findings, judgement }: Checked, world: World) {
  const { practice } = judgement;
  const { id, version, name } = practice;
  const said = findings.map((finding) => ({
    ...finding,
    ...sayFinding(finding),
    source: saySource(finding, practice, 'en'),
  }));
  const all = {
    troubles: troublesOf(read),
    practice: { id, version, name: name.en },
    findings: said,
    missing: missingOf(judgement),
  };
  world.give(JSON.stringify(all, null, 2));
}

/** The practice asked for, else that of the record. */
function practiceFor(given: Given, record: WellRecord, world: World): Result<Practice> {
  const wanted = textOption(given, 'practice');
  if (wanted !== undefined) return practiceNamed(wanted, world);
  const practice = practiceOf(record);
  const named = record.identity?.practice;
  if (named !== undefined && named !== practice.id)
    world.complain(
      `The record names the practice ${named}, which is not at hand; judged by ${practice.id}. Name its file with --practice.`,
    );
  return ok(practice);
}

/** `check`: what a record says wrongly or strangely, and what its practice would have otherwise. */
export const check: Command = {
  name: 'check',
  takes: 'RECORD.json [--practice FILE|ID]',
  says: 'Says what in the record cannot be read, contradicts itself, is not good practice or asks for a second look',
  options: { practice: { type: 'string' } },
  run(given, world) {
    const file = onlyWord(given.words, 'check');
    const read = file.ok ? readRecordFile(file.value, world) : file;
    if (!read.ok) return read;
    const { record } = read.value;
    const practice = practiceFor(given, record, world);
    if (!practice.ok) return practice;
    const model = resolveWell(record);
    const judgement = judgedWell(record, model, practice.value);
    const findings = [...model.findings, ...judgement.findings].filter(
      ({ code }) => !isSaidByPath(code),
    );
    const print = given.options['json'] === true ? printJson : printLines;
    print({ read: read.value, findings, judgement }, world);
    return ok(hasErrors(troublesOf(read.value), findings) ? 1 : 0);
  },
};
