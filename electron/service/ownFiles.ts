import { ok, type Result } from '../../core/base/result.ts';

/** A file of the user's as an archive keeps it. */
interface KeptText {
  readonly id: string;
  readonly json: string;
  /** ISO 8601. */
  readonly changedAt: string;
}

/** Files of one kind that an archive keeps, and those that this version cannot read. */
export interface OwnFiles<File> {
  readonly read: readonly { readonly file: File; readonly changedAt: string }[];
  readonly unread: readonly { readonly id: string; readonly sentence: string }[];
}

/** Reads the user's files of one kind, each by itself. */
export function readOwn<File>(
  kept: Result<readonly KeptText[]>,
  readText: (text: string) => Result<File>,
): Result<OwnFiles<File>> {
  if (!kept.ok) return kept;
  const read: { file: File; changedAt: string }[] = [];
  const unread: { id: string; sentence: string }[] = [];
  for (const { id, json, changedAt } of kept.value) {
    const file = readText(json);
    if (file.ok) read.push({ file: file.value, changedAt });
    else unread.push({ id, sentence: file.error.sentence });
  }
  return ok({ read, unread });
}

/** The files alone; none where the archive cannot be asked. */
export function filesOf<File>(own: Result<OwnFiles<File>>): readonly File[] {
  return own.ok ? own.value.read.map(({ file }) => file) : [];
}
