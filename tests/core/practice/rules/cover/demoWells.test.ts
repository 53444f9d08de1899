import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { coverRules } from '../../../../../core/practice/rules/cover/index.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';

const folder = path.resolve(import.meta.dirname, '../../../../../demo-data');

function saidOf(file: string): string[] {
  const record = JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as WellRecord;
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return coverRules
    .map((rule) => rule.judge(well))
    .flatMap(({ findings, missing }) => [
      ...findings.map(({ severity, code, path }) => `${severity} ${code} ${path}`),
      ...missing.map(({ what, path }) => `missing ${what} ${path}`),
    ]);
}

it('says of the demo wells what demo-data/README.md means them to show, and no more', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
  expect(Object.fromEntries(files.map((file) => [file, saidOf(file)]))).toEqual({
    'collapsed-hole-38m.json': [],
    'dry-hole-26m.json': [],
    'hand-drilled-32m.json': ['note gap.narrow annulus[3]'],
    'laid-out-45m.json': ['note gap.narrow annulus[3]'],
    'shallow-direct-action-9m.json': ['note gap.narrow annulus[3]'],
    'sixty-intervals-58m.json': ['note gap.narrow annulus[3]', 'warning poured.little annulus[3]'],
    'telescoped-in-granite.json': ['note gap.narrow annulus[4]'],
    'two-screens-58m.json': [
      'warning aquifers.screened strings[0]',
      'note gap.narrow annulus[3]',
      'note gap.narrow annulus[7]',
    ],
  });
});
