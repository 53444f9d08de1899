import { languages, type Language } from '../../core/base/language.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Gives, Takes } from '../../core/contract/calls.ts';
import type { IssueRow } from '../../core/contract/issuesShape.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import type { FreeMarkOnPage, IssueLine } from '../archive/issues.ts';
import { readSeals } from '../seal/readSeals.ts';
import type { FoundSeal, SealDetails, Signer } from '../seal/seal.ts';
import { sealPdf } from '../seal/sealPdf.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { openKept } from './identities.ts';
import { issuePaper } from './issuePaper.ts';
import { sealRow } from './sealRow.ts';

type SealCall = Takes<'issues.seal'>;

function rowOf({ archive }: ServiceParts, line: IssueLine): Result<IssueRow> {
  const { wellId, number, revision, paper, languages: spoken, fileName } = line;
  const { recordHash, issuedAt } = line;
  const pdf = archive.issues.pdf(wellId, number);
  if (!pdf.ok) return pdf;
  const seals = readSeals(pdf.value).seals.map(sealRow);
  return ok({ number, revision, paper, languages: spoken, fileName, recordHash, issuedAt, seals });
}

function list(parts: ServiceParts, id: string): Result<Gives<'issues.list'>> {
  const lines = parts.archive.issues.list(id);
  if (!lines.ok) return lines;
  const rows: IssueRow[] = [];
  for (const line of lines.value) {
    const row = rowOf(parts, line);
    if (!row.ok) return row;
    rows.push(row.value);
  }
  return ok(rows);
}

function lineOf({ archive }: ServiceParts, id: string, number: number): Result<IssueLine> {
  const lines = archive.issues.list(id);
  if (!lines.ok) return lines;
  const line = lines.value.find((one) => one.number === number);
  if (line) return ok(line);
  return refused(
    'noSuchIssue',
    'The archive has no such paper. Choose one of those that it lists.',
  );
}

/** The language of a paper's first words. */
function languageOf({ languages: spoken }: IssueLine): Language {
  return languages.find((one) => one === spoken.split(',')[0]) ?? 'en';
}

/** Boxes nearer to each other than this are one, mm: a PDF keeps them to a thousandth of that. */
const sameMm = 1;

/** The free box of the role, unless an earlier seal shows in it. */
function boxFor(
  { freeMarks }: IssueLine,
  role: SealCall['role'],
  seals: readonly FoundSeal[],
): FreeMarkOnPage | undefined {
  const taken = (one: FreeMarkOnPage) =>
    seals.some(
      ({ box }) =>
        box?.page === one.page && Math.hypot(box.x - one.box.x, box.y - one.box.y) < sameMm,
    );
  return freeMarks.find((one) => one.role === role && !taken(one));
}

function detailsOf(
  { fonts, clock }: ServiceParts,
  { role, place }: SealCall,
  signer: Signer,
  line: IssueLine,
  seals: readonly FoundSeal[],
): SealDetails {
  const at = clock();
  const said = sheetWordsIn(languageOf(line)).roles[role];
  const free = boxFor(line, role, seals);
  const lines = [signer.name, signer.organisation, at.slice(0, 10)].filter(
    (one) => one !== undefined,
  );
  return {
    role: said,
    at,
    ...(place === undefined ? {} : { place }),
    ...(free && {
      shown: { box: { page: free.page, ...free.box }, lines, face: fonts.files.regular },
    }),
  };
}

async function seal(parts: ServiceParts, call: SealCall): Promise<Result<IssueRow>> {
  const { archive, identities, clock } = parts;
  const line = lineOf(parts, call.id, call.number);
  if (!line.ok) return line;
  const signer = await openKept(identities, call.fingerprint, call.passphrase, clock());
  if (!signer.ok) return signer;
  const pdf = archive.issues.pdf(call.id, call.number);
  if (!pdf.ok) return pdf;
  const { seals } = readSeals(pdf.value);
  const details = detailsOf(parts, call, signer.value, line.value, seals);
  const sealed = sealPdf(pdf.value, signer.value, details);
  if (!sealed.ok) return sealed;
  const kept = archive.issues.seal(call.id, call.number, sealed.value);
  return kept.ok ? rowOf(parts, line.value) : kept;
}

/** Calls about papers that were issued. */
export function issuesHandlers(parts: ServiceParts): Handlers<'issues'> {
  const { archive, tell } = parts;
  const changed = (id: string, row: Result<IssueRow>) => {
    if (row.ok) tell({ name: 'issues.changed', data: { id } });
    return row;
  };
  return {
    'issues.list': reads(({ id }) => list(parts, id)),
    'issues.make': writes(({ id, paper }) => {
      const line = issuePaper(parts, id, paper);
      return line.ok ? changed(id, rowOf(parts, line.value)) : line;
    }),
    'issues.pdf': reads(({ id, number }) => {
      const line = lineOf(parts, id, number);
      if (!line.ok) return line;
      const pdf = archive.issues.pdf(id, number);
      if (!pdf.ok) return pdf;
      const { fileName } = line.value;
      return ok({ fileName, pdf: Buffer.from(pdf.value).toString('base64') });
    }),
    'issues.seal': writes(async (call) => changed(call.id, await seal(parts, call))),
  };
}
