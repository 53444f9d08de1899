import { refused, type Result } from '../base/result.ts';
import { holdPractice } from './holdPractice.ts';
import type { Practice, PracticeFile } from './practice.ts';
import { shippedPractices } from './shippedPractices.ts';

const isShipped = (id: string) => shippedPractices.some((one) => one.id === id);

/**
 * A practice of the user among the others that there are; it takes the place of the one with its
 * id. Refused where it bears the id of one that comes with the program, or cannot be held.
 */
export function admitPractice(
  file: PracticeFile,
  others: readonly PracticeFile[],
): Result<Practice> {
  if (isShipped(file.id))
    return refused(
      'practiceShipped',
      `The practice “${file.id}” comes with the program and stays as it is. Give yours another id, and base it on that one.`,
    );
  const rest = others.filter(({ id }) => id !== file.id);
  return holdPractice(file.id, [file, ...rest, ...shippedPractices]);
}
