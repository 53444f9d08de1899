import { ok, type Result } from '../../core/base/result.ts';
import type { OwnGuidelines, UnreadGuidelines } from '../../core/contract/guidelinesShape.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import { readGuidelinesText } from '../../core/water/guidelines/readGuidelines.ts';
import type { Guidelines } from '../archive/guidelines.ts';
import { filesOf, readOwn } from './ownFiles.ts';

export interface ReadSets {
  readonly sets: readonly OwnGuidelines[];
  readonly unread: readonly UnreadGuidelines[];
}

/** The user's sets of guideline values in an archive, and those that this version cannot read. */
export function ownGuidelines(guidelines: Guidelines): Result<ReadSets> {
  const own = readOwn(guidelines.list(), readGuidelinesText);
  return own.ok ? ok({ sets: own.value.read, unread: own.value.unread }) : own;
}

/** The files alone, of those that can be read; none where the archive cannot be asked. */
export function ownGuidelineFiles(guidelines: Guidelines): readonly GuidelineFile[] {
  return filesOf(readOwn(guidelines.list(), readGuidelinesText));
}
