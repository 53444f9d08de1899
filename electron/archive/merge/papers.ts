import type { ReadHandle, WriteHandle } from '../handles.ts';
import { findRevision } from '../tables/revisions.ts';
import { findWell } from '../tables/wells.ts';
import { idHere, revisionWith, underOurId } from './plan.ts';
import { issueParts, listIssues, putIssue, putSeal, type IssueLine } from '../tables/issues.ts';

interface Paper {
  readonly line: IssueLine;
  /** The paper, and what each signature added. */
  readonly parts: readonly Uint8Array[];
}

function papersOf(db: ReadHandle, wellId: string): Paper[] {
  return listIssues(db, wellId).map((line) => ({
    line,
    parts: issueParts(db, wellId, line.number),
  }));
}

function startsWith(parts: readonly Uint8Array[], others: readonly Uint8Array[]): boolean {
  return others.every((other, at) => {
    const part = parts[at];
    return part !== undefined && Buffer.compare(part, other) === 0;
  });
}

function putSeals(db: WriteHandle, line: IssueLine, { parts }: Paper, from: number, now: string) {
  for (const [at, added] of parts.slice(1).entries())
    if (at >= from)
      putSeal(db, {
        wellId: line.wellId,
        number: line.number,
        seal: at + 1,
        sealedAt: now,
        added,
      });
}

function bringPapersOf(
  db: WriteHandle,
  theirs: ReadHandle,
  well: { readonly id: string; readonly ourId: string },
  now: string,
): void {
  const here = papersOf(db, well.ourId);
  for (const paper of papersOf(theirs, well.id)) {
    if (here.some(({ parts }) => startsWith(parts, paper.parts))) continue;
    const shorter = here.find(({ parts }) => startsWith(paper.parts, parts));
    if (shorter) {
      putSeals(db, shorter.line, paper, shorter.parts.length - 1, now);
      continue;
    }
    const { record } = findRevision(theirs, well.id, paper.line.revision)!;
    const revision = revisionWith(db, well.ourId, underOurId(record, well));
    if (revision === undefined) continue;
    const shownId = paper.line.shownId ?? well.id;
    const line = {
      ...paper.line,
      wellId: well.ourId,
      number: here.length + 1,
      revision,
      ...(shownId !== well.ourId && { shownId }),
    };
    putIssue(db, line, paper.parts[0]!);
    putSeals(db, line, paper, 0, now);
    here.push({ line, parts: paper.parts });
  }
}

/**
 * Brings the issued papers over of every revision that is here by now. One that both have gets the
 * signatures that it lacks here; one that was signed otherwise in the two comes as another paper.
 */
export function bringPapers(db: WriteHandle, theirs: ReadHandle, now: string): void {
  const ids = theirs.prepare<[], string>('SELECT DISTINCT well_id FROM issue ORDER BY well_id');
  for (const id of ids.pluck().all()) {
    const ourId = idHere(db, findWell(theirs, id)!);
    if (ourId !== undefined) bringPapersOf(db, theirs, { id, ourId }, now);
  }
}
