import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { madeArchive } from './madeArchive.ts';

/** A copy of a made archive in a folder of its own, so that the made one stays as it was made. */
export interface MadeCopy {
  readonly folder: string;
  readonly file: string;
  drop(): void;
}

export async function madeCopy(wells: number): Promise<MadeCopy> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-bench-'));
  const file = path.join(folder, 'wells.borefolio');
  copyFileSync(await madeArchive(path.join(tmpdir(), 'borefolio-bench-wells'), wells), file);
  return { folder, file, drop: () => rmSync(folder, { recursive: true }) };
}
