import { refused, type Result } from '../../base/result.ts';
import type { GuidelineFile, GuidelineSet } from './guidelineSet.ts';
import { holdGuidelines } from './holdGuidelines.ts';
import { shippedGuidelines } from './shippedGuidelines.ts';

/**
 * A set of the user among the others that there are; it takes the place of the one with its id.
 * Refused where it bears the id of one that comes with the program, or cannot be held.
 */
export function admitGuidelines(
  file: GuidelineFile,
  others: readonly GuidelineFile[],
): Result<GuidelineSet> {
  if (shippedGuidelines.some(({ id }) => id === file.id))
    return refused(
      'guidelinesShipped',
      `The set “${file.id}” comes with the program and stays as it is. Give yours another id, and base it on that one.`,
    );
  const rest = others.filter(({ id }) => id !== file.id);
  return holdGuidelines(file.id, [file, ...rest, ...shippedGuidelines]);
}
