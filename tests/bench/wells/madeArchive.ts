import { existsSync, mkdirSync, renameSync } from 'node:fs';
import path from 'node:path';
import { openArchive } from '../../../electron/archive/open.ts';
import { madeWells } from './madeWell.ts';

/** Wells of one transaction: its pages stay in memory, and its journal small. */
const eachTime = 10_000;

const world = { now: () => '2026-01-15T08:00:00.000Z' };
const said = { author: 'Bench', reason: 'made for measuring' };

/**
 * An archive of so many made wells in a folder, streamed into it. One that is there already is
 * taken as it is, since the same wells are made each time.
 */
export async function madeArchive(folder: string, count: number): Promise<string> {
  const file = path.join(folder, `${count} wells.borefolio`);
  if (existsSync(file)) return file;
  mkdirSync(folder, { recursive: true });
  const part = `${file}.part`;
  const opened = openArchive(part, world);
  if (!opened.ok) throw new Error(opened.error.sentence);
  for (let from = 0; from < count; from += eachTime) {
    const wells = madeWells(Math.min(eachTime, count - from), from);
    const brought = await opened.value.bring(wells, said);
    if (!brought.ok) throw new Error(brought.error.sentence);
  }
  opened.value.close();
  renameSync(part, file);
  return file;
}
