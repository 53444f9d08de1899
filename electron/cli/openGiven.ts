import path from 'node:path';
import type { Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import { openArchive } from '../archive/open.ts';
import type { World } from './command.ts';

/** Wells between two lines on how far an older archive is brought up to date. */
const eachSo = 10_000;

/** Tells how far an older archive is brought up to date, where that takes a while. */
export function tellBringing({ progress }: World): (done: number, of: number) => void {
  return (done, of) => {
    if (of >= eachSo && done % eachSo === 0) progress(`${done} of ${of} wells brought up to date`);
  };
}

/** Opens the archive that was named. */
export function openGiven(file: string, world: World, mustExist = true): Result<Archive> {
  return openArchive(path.resolve(world.folder, file), {
    now: world.now,
    mustExist,
    onBringing: tellBringing(world),
  });
}
