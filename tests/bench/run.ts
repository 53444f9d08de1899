/**
 * `npm run bench -- --machine "2 cores, Linux" --date 2026-01-15 [--rounds 20]`: runs every trial of
 * this folder and writes docs/benchmarks.md. With `--only binder` it runs one and prints its part;
 * `--wells 1000,10000` makes the archives smaller than 1000, 10 000 and 100 000 wells.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { Asked } from './asked.ts';
import { writeReport } from './report.ts';
import { runTrial, type Timing, type Trial } from './trial.ts';

const here = import.meta.dirname;
const { values } = parseArgs({
  options: {
    machine: { type: 'string' },
    date: { type: 'string' },
    rounds: { type: 'string', default: '20' },
    only: { type: 'string' },
    wells: { type: 'string', default: '1000,10000,100000' },
  },
});
const { machine, date, only } = values;
const rounds = Number(values.rounds);
const wells = values.wells.split(',').map(Number);
if (!machine || !date || !(rounds >= 1) || !wells.every((size) => size >= 1)) {
  console.error(
    'Say where and when: npm run bench -- --machine "2 cores, Linux" --date 2026-01-15',
  );
  process.exit(2);
}

const results: [Trial, Timing[]][] = [];
const others: string[] = [];
for (const name of readdirSync(here)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => only === undefined || file === `${only}.bench.ts`)
  .sort()) {
  const { trial, part } = (await import(path.join(here, name))) as {
    trial?: Trial;
    part?: (asked: Asked) => Promise<string>;
  };
  if (trial) results.push([trial, runTrial(trial, rounds, () => performance.now())]);
  if (part) others.push(await part({ rounds, wells }));
}
const report = writeReport(results, others, { machine, date, rounds });
if (only === undefined) writeFileSync(path.resolve(here, '../../docs/benchmarks.md'), report);
console.log(report);
