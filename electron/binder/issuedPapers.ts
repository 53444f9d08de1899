import type { BoundPaper } from '../../core/drawing/binder/boundPapers.ts';
import type { IssuedPaper, Signature } from '../../core/drawing/binder/issued/issuedPaper.ts';
import type { Archive } from '../archive/archive.ts';
import type { IssueLine } from '../archive/issues.ts';
import { sha256Hex } from '../seal/hash.ts';
import { readSeals } from '../seal/readSeals.ts';
import type { WellToLay } from './messages.ts';

/** A paper that was issued of a well of the binder. */
export interface IssueOfWell {
  readonly well: WellToLay;
  readonly line: IssueLine;
}

/** What was issued of some wells, in their order. Throws what the disk says. */
export function issuesOf({ issues }: Archive, wells: readonly WellToLay[]): IssueOfWell[] {
  const all = issues.all();
  if (!all.ok) throw new Error(all.error.sentence);
  const byWell = new Map<string, IssueLine[]>();
  for (const line of all.value) {
    const there = byWell.get(line.wellId);
    if (there) there.push(line);
    else byWell.set(line.wellId, [line]);
  }
  return wells.flatMap((well) => (byWell.get(well.id) ?? []).map((line) => ({ well, line })));
}

/** The file with all its signatures. Throws what the disk says. */
export function pdfOf({ issues }: Archive, { line }: IssueOfWell): Uint8Array {
  const pdf = issues.pdf(line.wellId, line.number);
  if (!pdf.ok) throw new Error(pdf.error.sentence);
  return pdf.value;
}

/** The first word of a paper as the archive lists it tells its kind. */
const kinds: Readonly<Record<string, BoundPaper>> = {
  'as-built': 'asBuilt',
  'laying-out': 'layingOut',
  committee: 'committee',
};

function signaturesOf(pdf: Uint8Array): Signature[] {
  return readSeals(pdf).seals.map(({ name = '', role = '', state }) => ({ name, role, state }));
}

function issuedPaper(archive: Archive, issue: IssueOfWell): IssuedPaper {
  const { well, line } = issue;
  const { number, paper, languages, revision, issuedAt } = line;
  const kind = kinds[paper.split(' ')[0]!];
  const pdf = pdfOf(archive, issue);
  return {
    wellId: well.id,
    number,
    ...(kind && { kind }),
    paper,
    languages,
    revision,
    newest: well.revision,
    issuedAt,
    signatures: signaturesOf(pdf),
    hash: sha256Hex(pdf),
  };
}

/** What a binder lists of the papers that were issued of its wells. */
export function issuedPapers(archive: Archive, wells: readonly WellToLay[]): IssuedPaper[] {
  return issuesOf(archive, wells).map((issue) => issuedPaper(archive, issue));
}
