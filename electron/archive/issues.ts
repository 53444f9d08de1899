import { hash } from 'node:crypto';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { ReadHandle, WriteHandle } from './handles.ts';
import type { Access } from './lists.ts';
import { noWell } from './read.ts';
import {
  everyIssue,
  findIssue,
  issueParts,
  listIssues,
  putIssue,
  putSeal,
  type IssueLine,
} from './tables/issues.ts';
import { findWell } from './tables/wells.ts';

export type { FreeMarkOnPage, IssueLine } from './tables/issues.ts';

/** What is to be issued. */
export type NewIssue = Omit<IssueLine, 'number' | 'issuedAt' | 'pdfHash' | 'shownId'> & {
  readonly pdf: Uint8Array;
};

/** Papers as they were issued, and what was signed of them. */
export interface Issues {
  /** First to last. */
  list(wellId: string): Result<readonly IssueLine[]>;
  /** Of all wells. */
  all(): Result<readonly IssueLine[]>;
  /** Refused as `staleRevision` when the well has a newer revision by now. */
  add(issue: NewIssue): Result<IssueLine>;
  /** The paper with all signatures. */
  pdf(wellId: string, number: number): Result<Uint8Array>;
  /** The paper as it was issued, and what each signature added. */
  parts(wellId: string, number: number): Result<readonly Uint8Array[]>;
  /**
   * Keeps a paper that was signed once more: its beginning must be the paper as it is kept, byte
   * for byte. Refused as `notTheSamePaper` otherwise.
   */
  seal(wellId: string, number: number, sealed: Uint8Array): Result<void>;
}

const noIssue = () =>
  refused('noSuchIssue', 'The archive has no such paper. Choose one of those that it lists.');

function add(db: WriteHandle, { pdf, ...issue }: NewIssue, issuedAt: string): Result<IssueLine> {
  const well = findWell(db, issue.wellId);
  if (!well) return noWell(issue.wellId);
  if (well.revision !== issue.revision)
    return refused(
      'staleRevision',
      `The well has revision ${well.revision} by now. Issue the paper of that one.`,
    );
  const number = listIssues(db, issue.wellId).length + 1;
  const line = { ...issue, number, issuedAt, pdfHash: hash('sha256', pdf) };
  putIssue(db, line, pdf);
  return ok(line);
}

function partsOf(db: ReadHandle, wellId: string, number: number): Result<readonly Uint8Array[]> {
  const parts = issueParts(db, wellId, number);
  return parts.length === 0 ? noIssue() : ok(parts);
}

function pdfOf(db: ReadHandle, wellId: string, number: number): Result<Uint8Array> {
  const parts = partsOf(db, wellId, number);
  return parts.ok ? ok(new Uint8Array(Buffer.concat(parts.value))) : parts;
}

function seal(
  db: WriteHandle,
  key: { readonly wellId: string; readonly number: number },
  sealed: Uint8Array,
  sealedAt: string,
): Result<void> {
  const { wellId, number } = key;
  if (!findIssue(db, wellId, number)) return noIssue();
  const parts = issueParts(db, wellId, number);
  const kept = Buffer.concat(parts);
  const added = sealed.subarray(kept.length);
  if (added.length === 0 || !kept.equals(sealed.subarray(0, kept.length)))
    return refused(
      'notTheSamePaper',
      'What was signed is not the paper that the archive keeps. Open the paper again and sign that one.',
    );
  putSeal(db, { ...key, seal: parts.length, sealedAt, added });
  return ok(undefined);
}

export function issuesIn({ reading, writing }: Access, now: () => string): Issues {
  return {
    list: (wellId) =>
      reading((db) => (findWell(db, wellId) ? ok(listIssues(db, wellId)) : noWell(wellId))),
    add: (issue) => writing((db) => db.transaction(() => add(db, issue, now())).immediate()),
    all: () => reading((db) => ok(everyIssue(db))),
    parts: (wellId, number) => reading((db) => partsOf(db, wellId, number)),
    pdf: (wellId, number) => reading((db) => pdfOf(db, wellId, number)),
    seal: (wellId, number, sealed) =>
      writing((db) =>
        db.transaction(() => seal(db, { wellId, number }, sealed, now())).immediate(),
      ),
  };
}
