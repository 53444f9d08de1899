import { ok, type Result } from '../../core/base/result.ts';
import type { FoundPaper } from '../../core/contract/issuesShape.ts';
import type { Archive } from '../archive/archive.ts';
import { readPaperMark, type PaperMark } from '../seal/readPaperMark.ts';
import { readSeals } from '../seal/readSeals.ts';
import { recordHash } from '../seal/recordHash.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import { sealRow } from './sealRow.ts';
import { storedWell } from './stored.ts';

type Held = Pick<FoundPaper, 'held' | 'wellId'>;

/** The revisions to look at, that which the paper names first. */
function revisionsToSee(archive: Archive, id: string, named: number | undefined): number[] {
  const lines = archive.revisions(id);
  if (!lines.ok) return [];
  const all = lines.value.map(({ revision }) => revision).reverse();
  return [...all.filter((one) => one === named), ...all.filter((one) => one !== named)];
}

function isRevision(archive: Archive, id: string, revision: number, hash: string): boolean {
  const stored = archive.openRevision(id, revision);
  const well = stored.ok ? storedWell(stored.value) : stored;
  return well.ok && recordHash(well.value.record) === hash;
}

/** Whether an archive has the record that a paper says it shows, by the record's hash. */
export function heldIn(archive: Archive, mark: PaperMark): Held {
  const { wellNumber: number = '', revision, recordHash: hash } = mark;
  if (hash === undefined) return {};
  const listed = archive.list(number);
  const wells = listed.ok ? listed.value.filter((one) => one.number === number) : [];
  for (const { id } of wells)
    for (const one of revisionsToSee(archive, id, revision))
      if (isRevision(archive, id, one, hash)) return { held: 'same', wellId: id };
  const [first] = wells;
  return first ? { held: 'other', wellId: first.id } : { held: 'unknown' };
}

/** What a PDF says of itself, and whether the archive has its record. */
export function readPaper(archive: Archive, pdf: Uint8Array): FoundPaper {
  const mark = readPaperMark(pdf);
  const { wellNumber, ...said } = mark;
  const named = wellNumber === undefined ? said : { number: wellNumber, ...said };
  const { state, seals, sentence } = readSeals(pdf);
  return { ...named, ...heldIn(archive, mark), state, seals: seals.map(sealRow), sentence };
}

/** Calls about papers that somebody brings. */
export function sealsHandlers({ archive }: ServiceParts): Handlers<'seals'> {
  return {
    'seals.read': reads(({ pdf }): Result<FoundPaper> =>
      ok(readPaper(archive, new Uint8Array(Buffer.from(pdf, 'base64')))),
    ),
  };
}
