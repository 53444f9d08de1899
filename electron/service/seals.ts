import { ok, type Result } from '../../core/base/result.ts';
import type { FoundPaper } from '../../core/contract/issuesShape.ts';
import type { Archive } from '../archive/archive.ts';
import { readPaperMark, type PaperMark } from '../seal/readPaperMark.ts';
import { readSeals } from '../seal/readSeals.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import { heldRecord } from './heldRecord.ts';
import { sealRow } from './sealRow.ts';

type Held = Pick<FoundPaper, 'held' | 'wellId'>;

/** Whether an archive has the record that a paper says it shows, by the record's hash. */
export function heldIn(archive: Archive, mark: PaperMark): Held {
  const found = heldRecord(archive, mark);
  if (!found.ok || found.value.held === 'unsaid') return {};
  if (found.value.held === 'noWell') return { held: 'unknown' };
  return { held: found.value.held, wellId: found.value.id };
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
