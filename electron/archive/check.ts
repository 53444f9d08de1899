import { chainStart, linkHash } from './chain.ts';
import type { ReadHandle } from './handles.ts';
import { everyRevision, type Revision } from './tables/revisions.ts';
import { listHeads } from './tables/wells.ts';

/** A revision that is not what was saved. */
export interface BrokenLink {
  readonly id: string;
  readonly revision: number;
  readonly sentence: string;
}

export interface ChainCheck {
  readonly revisions: number;
  readonly broken: readonly BrokenLink[];
}

const changed = (number: number) =>
  `Revision ${number} is not what was saved: it, or one before it, was changed outside the program. Compare it with a backup.`;
const missing = (number: number) => `Revision ${number} is missing. Take it from a backup.`;

/**
 * Goes through every well's chain of hashes. A break is told once, at the first revision that
 * does not fit: each link is judged against the hash that stands before it.
 */
export function checkChains(db: ReadHandle): ChainCheck {
  const broken: BrokenLink[] = [];
  const say = (id: string, revision: number, sentence: string) =>
    broken.push({ id, revision, sentence });
  const last = new Map<string, Revision>();
  let revisions = 0;
  for (const revision of everyRevision(db)) {
    revisions += 1;
    const { wellId, number } = revision;
    const before = last.get(wellId);
    const expected = (before?.number ?? 0) + 1;
    if (number !== expected) say(wellId, expected, missing(expected));
    else if (revision.hash !== linkHash(before?.hash ?? chainStart, revision))
      say(wellId, number, changed(number));
    last.set(wellId, revision);
  }
  for (const { id, revision } of listHeads(db)) {
    const found = last.get(id)?.number ?? 0;
    if (found !== revision) say(id, found + 1, missing(found + 1));
  }
  return { revisions, broken };
}
