import type { Timing, Trial } from './trial.ts';

export interface Circumstances {
  /** The machine, in words. */
  readonly machine: string;
  /** Day of the run, as in 2026-01-15. */
  readonly date: string;
  readonly rounds: number;
}

/** Three figures at most: times swing by more than what would follow. */
export function shown(value: number): string {
  return value >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(2)));
}

/** The value that a share (0 to 1) of all values do not exceed. */
export function centile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? NaN;
}

function trialPart({ title, says }: Trial, timings: readonly Timing[]): string {
  const rows = timings.map(
    ({ name, ratio, medianMs }) => `| ${name} | ${shown(ratio)} | ${shown(medianMs)} |`,
  );
  return [`## ${title}`, '', says, '', '| | ratio | ms |', '|---|---|---|', ...rows].join('\n');
}

/** The run as Markdown; parts that say their own follow. */
export function writeReport(
  results: readonly (readonly [Trial, readonly Timing[]])[],
  others: readonly string[],
  { machine, date, rounds }: Circumstances,
): string {
  const intro = [
    '# Benchmarks',
    '',
    `Made by \`npm run bench\` on ${date}, on ${machine}. Rivals ran in turn, ${rounds} rounds each in one`,
    'process; medians. Read the ratios: milliseconds are of that machine on that day.',
  ].join('\n');
  const parts = [...results.map(([trial, timings]) => trialPart(trial, timings)), ...others];
  return `${[intro, ...parts].join('\n\n')}\n`;
}
