import type { ReadHandle, WriteHandle } from '../handles.ts';
import { listBackdrops, putBackdrop } from '../tables/backdrops.ts';
import {
  findAttachment,
  findPrintCopy,
  putAttachment,
  putPrintCopy,
} from '../tables/attachments.ts';
import { listGuidelines, putGuidelines } from '../tables/guidelines.ts';
import { listPractices, putPractice } from '../tables/practices.ts';
import { listTemplates, putTemplate } from '../tables/templates.ts';

interface Kept {
  readonly id: string;
}

/** Puts in what has no namesake here; gives the ids of those that have one that is otherwise. */
function putMissing<T extends Kept>(
  theirs: readonly T[],
  ours: readonly T[],
  contentOf: (one: T) => string,
  put: (one: T) => void,
): string[] {
  const here = new Map(ours.map((one) => [one.id, contentOf(one)]));
  for (const one of theirs) if (!here.has(one.id)) put(one);
  return theirs
    .filter((one) => (here.get(one.id) ?? contentOf(one)) !== contentOf(one))
    .map(({ id }) => id);
}

function bringFiles(db: WriteHandle, theirs: ReadHandle): void {
  const hashes = theirs.prepare<[], string>('SELECT hash FROM attachment ORDER BY hash').pluck();
  const isHere = db.prepare<[string], number>('SELECT 1 FROM attachment WHERE hash = ?').pluck();
  for (const hash of hashes.all()) {
    if (isHere.get(hash) !== undefined) continue;
    putAttachment(db, findAttachment(theirs, hash)!);
    const copy = findPrintCopy(theirs, hash);
    if (copy) putPrintCopy(db, hash, copy);
  }
}

/** Which one is the usual one stays as it is here. */
const templatesByName = (db: ReadHandle) =>
  listTemplates(db).map((one) => ({ ...one, id: one.name }));

/**
 * Brings over what stands beside the wells: files, practices, guideline values, templates, backdrops.
 * What is here under the same id or name stays as it is; the ids of those that the other archive has otherwise are
 * given.
 */
export function bringBeside(db: WriteHandle, theirs: ReadHandle): string[] {
  bringFiles(db, theirs);
  return [
    ...putMissing(
      listPractices(theirs),
      listPractices(db),
      ({ json }) => json,
      (one) => putPractice(db, one),
    ),
    ...putMissing(
      listGuidelines(theirs),
      listGuidelines(db),
      ({ json }) => json,
      (one) => putGuidelines(db, one),
    ),
    ...putMissing(
      templatesByName(theirs),
      templatesByName(db),
      ({ json }) => json,
      (one) => putTemplate(db, one),
    ),
    ...putMissing(
      listBackdrops(theirs),
      listBackdrops(db),
      ({ shapes }) => JSON.stringify(shapes),
      (one) => putBackdrop(db, one),
    ),
  ];
}
