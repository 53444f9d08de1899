import { ok } from '../../core/base/result.ts';
import type { Finding } from '../../core/base/finding.ts';
import type { ReadRecord } from '../../core/record/read.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { sayFinding } from '../../core/practice/catalogue.ts';
import type { Command, World } from './command.ts';
import { hasErrors } from './recordErrors.ts';
import { onlyWord, readRecordFile } from './readInput.ts';

const order = ['error', 'warning', 'note'] as const;

function countOf(findings: readonly Finding[], severity: Finding['severity']): string {
  const count = findings.filter((one) => one.severity === severity).length;
  return `${count} ${severity}${count === 1 ? '' : 's'}`;
}

function sayLine(finding: Finding): string {
  const { sentence, todo } = sayFinding(finding);
  return `${finding.path || 'record'}: ${sentence} ${todo}`;
}

function printLines(troubles: ReadRecord['troubles'], findings: readonly Finding[], world: World) {
  for (const { sentence } of troubles) world.print(`unread   ${sentence}`);
  for (const severity of order)
    for (const finding of findings.filter((one) => one.severity === severity))
      world.print(`${severity.padEnd(8)} ${sayLine(finding)}`);
  const counts = order.map((severity) => countOf(findings, severity)).join(', ');
  world.print(`${troubles.length} not readable; ${counts}`);
}

function printJson(troubles: ReadRecord['troubles'], findings: readonly Finding[], world: World) {
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
    const { record, troubles } = read.value;
    const { findings } = resolveWell(record);
    const print = options['json'] === true ? printJson : printLines;
    print(troubles, findings, world);
    return ok(hasErrors(troubles, findings) ? 1 : 0);
  },
};
