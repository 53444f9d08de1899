import type { z } from 'zod';
import { parsedJson, refusedFor, type FileFault } from '../../base/fileFaults.ts';
import { writePath, type PathStep } from '../../base/recordPath.ts';
import { ok, refused, type Result } from '../../base/result.ts';
import { guidelineSchema } from './guidelineSchema.ts';
import type { GuidelineFile } from './guidelineSet.ts';

/** Every fault with its place and the remedy. */
function faultsOf(issue: z.core.$ZodIssue): FileFault[] {
  const path = issue.path as PathStep[];
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      place: writePath([...path, key]),
      says: 'there is no such key',
    }));
  return [{ place: writePath(path), says: issue.message }];
}

/**
 * Reads a set of guideline values from parsed JSON. Refused with every fault, each with its place
 * and what to write instead.
 */
export function readGuidelines(written: unknown): Result<GuidelineFile> {
  const read = guidelineSchema.safeParse(written);
  if (read.success) return ok(read.data as GuidelineFile);
  const faults = read.error.issues.flatMap(faultsOf);
  return refusedFor('guidelinesUnread', 'This is no set of guideline values yet.', faults);
}

const notJson = refused(
  'guidelinesUnread',
  'This is not JSON, or not all of it. Choose a set that was written to a file as a whole.',
);

/** Reads a set from the text of its file. */
export function readGuidelinesText(text: string): Result<GuidelineFile> {
  const written = parsedJson(text, notJson);
  return written.ok ? readGuidelines(written.value) : written;
}
