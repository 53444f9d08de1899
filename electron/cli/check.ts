import { ok } from '../../core/base/result.ts';
import type { Finding } from '../../core/base/finding.ts';
import { contradictionsOf, troublesOf } from '../../core/record/consistency.ts';
import type { ReadRecord } from '../../core/record/read.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { sayFinding } from '../../core/practice/catalogue.ts';
import type { Command, World } from './command.ts';
import { hasErrors } from './recordErrors.ts';
import { onlyWord, readRecordFile } from './readInput.ts';

const order = ['error', 'warning', 'note'] as const;

function countOf(
  severities: readonly Finding['severity'][],
  severity: Finding['severity'],
): string {
  const count = severities.filter((one) => one === severity).length;
  return `${count} ${severity}${count === 1 ? '' : 's'}`;
}

function sayLine(finding: Finding): string {
  const { sentence, todo } = sayFinding(finding);
  return `${finding.path || 'record'}: ${sentence} ${todo}`;
}

/** Reversed ranges are said as contradictions, with both fields by name. */
function isSaidByPath(code: string): boolean {
  return code.endsWith('.reversed');
}

/** What a record contradicts itself in beside its findings is as bad as an error among them. */
function printLines(read: ReadRecord, findings: readonly Finding[], world: World) {
  const contradictions = contradictionsOf(read);
  for (const { sentence } of read.troubles) world.print(`unread   ${sentence}`);
  for (const { sentence } of contradictions) world.print(`error    ${sentence}`);
  for (const severity of order)
    for (const finding of findings.filter((one) => one.severity === severity))
      world.print(`${severity.padEnd(8)} ${sayLine(finding)}`);
  const severities = [
    ...contradictions.map(() => 'error' as const),
    ...findings.map(({ severity }) => severity),
  ];
  const counts = order.map((severity) => countOf(severities, severity)).join(', ');
  world.print(`${read.troubles.length} not readable; ${counts}`);
}

function printJson(read: ReadRecord, findings: readonly Finding[], world: World) {
  const troubles = troublesOf(read);
  const said = findings.map((finding) => ({ ...finding, ...sayFinding(finding) }));
  world.print(JSON.stringify({ troubles, findings: said }, null, 2));
}

/** `check`: what a record says wrongly or strangely. */
export const check: Command = {
  name: 'check',
  takes: 'RECORD.json [--json]',
  says: 'Says what in the record cannot be read, contradicts itself or asks for a second look',
  options: { json: { type: 'boolean' } },
  run({ words, options }, world) {
    const file = onlyWord(words, 'check');
    const read = file.ok ? readRecordFile(file.value, world) : file;
    if (!read.ok) return read;
    const findings = resolveWell(read.value.record).findings.filter(
      ({ code }) => !isSaidByPath(code),
    );
    const print = options['json'] === true ? printJson : printLines;
    print(read.value, findings, world);
    return ok(hasErrors(troublesOf(read.value), findings) ? 1 : 0);
  },
};
