import type { OwnPractice, UnreadPractice } from '../../core/contract/practicesShape.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';
import { readPracticeText } from '../../core/practice/readPractice.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { KeptPractice, Practices } from '../archive/practices.ts';

export interface ReadPractices {
  readonly practices: readonly OwnPractice[];
  readonly unread: readonly UnreadPractice[];
}

function readAll(kept: readonly KeptPractice[]): ReadPractices {
  const practices: OwnPractice[] = [];
  const unread: UnreadPractice[] = [];
  for (const { id, json, changedAt } of kept) {
    const read = readPracticeText(json);
    if (read.ok) practices.push({ file: read.value, changedAt });
    else unread.push({ id, sentence: read.error.sentence });
  }
  return { practices, unread };
}

/** The practices of the user in an archive, and those that this version cannot read. */
export function ownPractices(practices: Practices): Result<ReadPractices> {
  const kept = practices.list();
  return kept.ok ? ok(readAll(kept.value)) : kept;
}

/** The files alone, of those that can be read; none where the archive cannot be asked. */
export function ownPracticeFiles(practices: Practices): readonly PracticeFile[] {
  const own = ownPractices(practices);
  return own.ok ? own.value.practices.map(({ file }) => file) : [];
}
