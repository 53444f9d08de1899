import { spawn } from 'node:child_process';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { deskAfter } from '../../../core/record/desk.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, freshFolder, valueOf } from './sample.ts';

/** Lets a child type until `ms` after its first word, kills it, and gives what it was told last. */
async function killInTheMidst(file: string, ms: number): Promise<number> {
  const script = path.join(import.meta.dirname, 'savesForever.ts');
  const child = spawn(process.execPath, [script, file], { stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  let timer: NodeJS.Timeout | undefined;
  child.stdout.on('data', (chunk: Buffer) => {
    said += chunk.toString();
    timer ??= setTimeout(() => child.kill('SIGKILL'), ms);
  });
  const signal = await new Promise((done) => child.on('close', (_code, by) => done(by)));
  expect(signal).toBe('SIGKILL');
  // The last line may be cut; the one before it was told whole.
  return Number(said.split('\n').at(-2));
}

it('loses nothing that was told to be on disk when the program is killed in the midst', async () => {
  const file = path.join(freshFolder(), 'Kalo.borefolio');
  let before = 0;
  for (const ms of [3, 20, 45, 80]) {
    const told = await killInTheMidst(file, ms);
    expect(told).toBeGreaterThan(before);
    const archive = valueOf(openArchive(file, countingWorld()));
    const { edit, desk, base, moves } = valueOf(archive.working('a'));
    expect(edit).toBeGreaterThanOrEqual(told);
    expect(desk.record).toMatchObject({ at: edit });
    expect(deskAfter(base, moves)).toEqual(desk);
    expect(moves).toHaveLength(edit);
    const { revision } = valueOf(archive.open('a'));
    expect(valueOf(archive.check())).toEqual({ revisions: revision, broken: [] });
    archive.close();
    const db = new Database(file);
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    db.close();
    before = edit;
  }
});
