import type { z } from 'zod';
import { writePath, type PathStep } from '../../base/recordPath.ts';
import { ok, refused, type Result } from '../../base/result.ts';
import { guidelineSchema } from './guidelineSchema.ts';
import type { GuidelineFile } from './guidelineSet.ts';

/** A fault with its place and the remedy. */
function saidOf(issue: z.core.$ZodIssue): string[] {
  const path = issue.path as PathStep[];
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => `${writePath([...path, key])}: there is no such key`);
  const place = writePath(path);
  return [`${place === '' ? '' : `${place}: `}${issue.message}`];
}

/**
 * Reads a set of guideline values from parsed JSON. Refused with every fault, each with its place
 * and what to write instead.
 */
export function readGuidelines(written: unknown): Result<GuidelineFile> {
  const read = guidelineSchema.safeParse(written);
  if (read.success) return ok(read.data as GuidelineFile);
  const faults = read.error.issues.flatMap(saidOf);
  return refused(
    'guidelinesUnread',
    `This is no set of guideline values yet. ${faults.join('. ')}.`,
  );
}

/** Reads a set from the text of its file. */
export function readGuidelinesText(text: string): Result<GuidelineFile> {
  let written: unknown;
  try {
    written = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refused(
      'guidelinesUnread',
      'This is not JSON, or not all of it. Choose a set that was written to a file as a whole.',
    );
  }
  return readGuidelines(written);
}
