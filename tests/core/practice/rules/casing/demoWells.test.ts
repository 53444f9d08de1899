import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { casingRules } from '../../../../../core/practice/rules/casing/index.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';

const folder = path.resolve(import.meta.dirname, '../../../../../demo-data');

function saidOf(file: string): string[] {
  const record = JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as WellRecord;
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return casingRules.flatMap(({ id, judge }) => {
    const { findings, missing } = judge(well);
    return [
      ...findings.map(({ severity, path }) => `${severity} ${id} ${path}`),
      ...new Set(missing.map(({ what }) => `${id} misses ${what}`)),
    ];
  });
}

it('finds the casing of the demo wells good, and says what their records leave open', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
  const dry = 'screened.dry misses dryLevel';
  expect(Object.fromEntries(files.map((file) => [file, saidOf(file)]))).toEqual({
    'collapsed-hole-38m.json': [],
    'dry-hole-26m.json': [],
    'hand-drilled-32m.json': [],
    'laid-out-45m.json': [],
    'shallow-direct-action-9m.json': [dry],
    'sixty-intervals-58m.json': [dry],
    'telescoped-in-granite.json': [dry],
    'two-screens-58m.json': [dry, 'grain.pack misses grainOrSieve'],
  });
});
