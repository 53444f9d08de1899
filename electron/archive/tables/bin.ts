import type { ReadHandle, WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';

/** A well in the bin. */
export interface BinnedWell {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly village: string;
  readonly district: string;
  readonly revisions: number;
  readonly binnedAt: string;
}

type Row = Omit<BinnedWell, 'revisions' | 'binnedAt'> & {
  readonly revision: number;
  readonly binned_at: string;
};

function binnedOf({ revision, binned_at, ...row }: Row): BinnedWell {
  return { ...row, revisions: revision, binnedAt: binned_at };
}

/** The last put in first. */
export function listBin(db: ReadHandle): BinnedWell[] {
  return db
    .prepare<[], Row>(
      `SELECT id, number, name, village, district, revision, binned_at FROM well
       WHERE binned_at IS NOT NULL ORDER BY binned_at DESC, seq DESC`,
    )
    .all()
    .map(binnedOf);
}

export function isBinned(db: ReadHandle, id: string): boolean {
  const sql = 'SELECT binned_at IS NOT NULL FROM well WHERE id = ?';
  return kept<[string], number>(db, sql).pluck().get(id) === 1;
}

/** Puts a well into the bin, or back where there is no moment; false where it was there already. */
export function setBinned(db: WriteHandle, id: string, binnedAt: string | null): boolean {
  const { changes } = db
    .prepare('UPDATE well SET binned_at = ? WHERE id = ? AND (binned_at IS NULL) <> (? IS NULL)')
    .run(binnedAt, id, binnedAt);
  return changes > 0;
}

/** Everything that is kept of a well, what leans on the rest first; its line goes last. */
const allOfAWell = [
  'DELETE FROM edit WHERE well_id = ?',
  'DELETE FROM working WHERE well_id = ?',
  'DELETE FROM well_search WHERE rowid = (SELECT seq FROM well WHERE id = ?)',
  'DELETE FROM issue_seal WHERE well_id = ?',
  'DELETE FROM issue WHERE well_id = ?',
  'DELETE FROM revision WHERE well_id = ?',
  'DELETE FROM well WHERE id = ?',
];

/** Takes a well out of the archive for good, if it is in the bin. Gives whether it was. */
export function dropBinned(db: WriteHandle, id: string): boolean {
  const binned = db
    .prepare<[string], number>('SELECT 1 FROM well WHERE id = ? AND binned_at IS NOT NULL')
    .pluck()
    .get(id);
  if (binned === undefined) return false;
  for (const sql of allOfAWell) db.prepare<[string]>(sql).run(id);
  return true;
}
