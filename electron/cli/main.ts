import { randomUUID } from 'node:crypto';
import { pathToFileURL } from 'node:url';
import { settingsPlace } from '../files/settingsPlace.ts';
import { askSecret } from './askSecret.ts';
import type { Host } from './command.ts';
import { run } from './run.ts';

/** npm starts a script in the project's folder and notes where the caller stood. */
function callersFolder(): string {
  const throughNpm = process.env['npm_lifecycle_event'] === 'borefolio';
  return (throughNpm ? process.env['INIT_CWD'] : undefined) ?? process.cwd();
}

/** A reader that has seen enough, as `head` has, closes the pipe: that is no fault. */
function endWithThePipe(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
}

const host: Host = {
  print: (line) => void process.stdout.write(`${line}\n`),
  complain: (sentence) => void process.stderr.write(`${sentence}\n`),
  now: () => new Date().toISOString(),
  newId: randomUUID,
  settingsFile: settingsPlace(),
  folder: callersFolder(),
  askSecret,
  asksToStop: () =>
    new Promise((resolve) => {
      process.once('SIGINT', () => resolve());
      process.once('SIGTERM', () => resolve());
    }),
};

/** Runs the command line with what was typed after the program's name. */
export async function main(args: readonly string[]): Promise<void> {
  endWithThePipe();
  process.exitCode = await run(args, host);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  await main(process.argv.slice(2));
