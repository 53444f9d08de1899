import type { OwnPractice, UnreadPractice } from '../../core/contract/practicesShape.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';
import { readPracticeText } from '../../core/practice/readPractice.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { Practices } from '../archive/practices.ts';
import { filesOf, readOwn } from './ownFiles.ts';

export interface ReadPractices {
  readonly practices: readonly OwnPractice[];
  readonly unread: readonly UnreadPractice[];
}

/** The practices of the user in an archive, and those that this version cannot read. */
export function ownPractices(practices: Practices): Result<ReadPractices> {
  const own = readOwn(practices.list(), readPracticeText);
  return own.ok ? ok({ practices: own.value.read, unread: own.value.unread }) : own;
}

/** The files alone, of those that can be read; none where the archive cannot be asked. */
export function ownPracticeFiles(practices: Practices): readonly PracticeFile[] {
  return filesOf(readOwn(practices.list(), readPracticeText));
}
