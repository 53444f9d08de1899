import { existsSync } from 'node:fs';
import path from 'node:path';
import { refused, type Result } from '../../core/base/result.ts';
import { admitPractice } from '../../core/practice/admitPractice.ts';
import { holdPractice } from '../../core/practice/holdPractice.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { readPracticeText } from '../../core/practice/readPractice.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import { misused, type World } from './command.ts';
import { readBytes, textOf } from './readInput.ts';

/** A practice by its id, where it comes with the program, or from its file. */
export function practiceNamed(wanted: string, world: World): Result<Practice> {
  if (shippedPractices.some(({ id }) => id === wanted))
    return holdPractice(wanted, shippedPractices);
  if (!existsSync(path.resolve(world.folder, wanted)))
    return misused(
      `There is no practice and no file ${wanted}: --practice ${shippedPractices.map(({ id }) => id).join(', ')}, or the file of one of yours.`,
    );
  const bytes = readBytes(wanted, world);
  if (!bytes.ok) return bytes;
  const read = readPracticeText(textOf(bytes.value));
  const admitted = read.ok ? admitPractice(read.value, []) : read;
  if (admitted.ok) return admitted;
  return refused(admitted.error.code, `${wanted}: ${admitted.error.sentence}`);
}
