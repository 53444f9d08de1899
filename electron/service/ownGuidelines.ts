import { ok, type Result } from '../../core/base/result.ts';
import type { OwnGuidelines, UnreadGuidelines } from '../../core/contract/guidelinesShape.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import { readGuidelinesText } from '../../core/water/guidelines/readGuidelines.ts';
import type { Guidelines, KeptGuidelines } from '../archive/guidelines.ts';

export interface ReadSets {
  readonly sets: readonly OwnGuidelines[];
  readonly unread: readonly UnreadGuidelines[];
}

function readAll(kept: readonly KeptGuidelines[]): ReadSets {
  const sets: OwnGuidelines[] = [];
  const unread: UnreadGuidelines[] = [];
  for (const { id, json, changedAt } of kept) {
    const read = readGuidelinesText(json);
    if (read.ok) sets.push({ file: read.value, changedAt });
    else unread.push({ id, sentence: read.error.sentence });
  }
  return { sets, unread };
}

/** The user's sets of guideline values in an archive, and those that this version cannot read. */
export function ownGuidelines(guidelines: Guidelines): Result<ReadSets> {
  const kept = guidelines.list();
  return kept.ok ? ok(readAll(kept.value)) : kept;
}

/** The files alone, of those that can be read; none where the archive cannot be asked. */
export function ownGuidelineFiles(guidelines: Guidelines): readonly GuidelineFile[] {
  const own = ownGuidelines(guidelines);
  return own.ok ? own.value.sets.map(({ file }) => file) : [];
}
