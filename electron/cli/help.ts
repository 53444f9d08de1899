import { commands } from './commands.ts';
import type { Command } from './command.ts';

function entry({ name, takes, says }: Command): string {
  return `  borefolio ${name} ${takes}\n      ${says}.`;
}

/** What `--help` prints. */
export function help(): string {
  return [
    'Borefolio: from a borehole’s record to its as-built drawing.',
    '',
    ...commands.map(entry),
    '',
    'Every command takes --quiet, which leaves out what is said of the work, and --json, which gives it as JSON.',
    'A record is one well as a JSON file; an archive is a file of many wells (.borefolio).',
    'Exit code: 0 done, 1 the record has errors or a file is not whole, 2 the command was not understood.',
  ].join('\n');
}
