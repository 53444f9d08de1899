import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';
import type { ExitCode, Host } from '../../../electron/cli/command.ts';
import { run } from '../../../electron/cli/run.ts';

/** What a command answered. */
export interface Typed {
  readonly code: ExitCode;
  /** Lines of standard output and of standard error. */
  readonly out: readonly string[];
  readonly err: readonly string[];
}

/** A folder of its own for one test, gone after it. */
export function ownFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-cli-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A record with what it holds, as a file in a folder; gives the file's name. */
export function putRecord(folder: string, record: object, name = 'record.json'): string {
  writeFileSync(path.join(folder, name), JSON.stringify({ schemaVersion: 1, ...record }));
  return name;
}

/** Types a command in a folder; `asksToStop` ends what serves. */
export async function type(
  folder: string,
  args: readonly string[],
  world: Partial<Host> = {},
): Promise<Typed> {
  const out: string[] = [];
  const err: string[] = [];
  let ids = 0;
  const code = await run(args, {
    print: (line) => void out.push(...line.split('\n')),
    complain: (sentence) => void err.push(sentence),
    now: () => '2026-03-02T10:00:00.000Z',
    settingsFile: path.join(folder, 'settings.json'),
    newId: () => `00000000-0000-4000-8000-${String((ids += 1)).padStart(12, '0')}`,
    folder,
    askSecret: () => Promise.resolve(undefined),
    asksToStop: () => Promise.resolve(),
    ...world,
  });
  return { code, out, err };
}
