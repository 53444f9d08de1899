import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { commands } from '../../electron/cli/commands.ts';

const page = readFileSync(path.resolve(import.meta.dirname, '../../docs/command-line.md'), 'utf8');

it.each(commands.map(({ name, takes, says }) => [name, takes, says]))(
  'the command %s stands in the page on the command line as its help has it',
  (name, takes, says) => {
    expect(page).toContain(`\n## ${name}\n\n    borefolio ${name} ${takes}\n\n${says}.\n`);
  },
);
