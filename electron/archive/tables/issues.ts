import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A box for a mark, mm from the page's top left corner. */
export interface FreeMarkOnPage {
  readonly role: string;
  /** From 1. */
  readonly page: number;
  readonly box: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

/** A paper as it was issued. */
export interface IssueLine {
  readonly wellId: string;
  /** From 1, over all papers of the well. */
  readonly number: number;
  readonly revision: number;
  /** Kind and size of the paper. */
  readonly paper: string;
  /** BCP 47, joined by commas. */
  readonly languages: string;
  readonly fileName: string;
  /** SHA-256 of the record that it shows, hexadecimal. */
  readonly recordHash: string;
  /** ISO 8601. */
  readonly issuedAt: string;
  /** Boxes that stood free for those who sign. */
  readonly freeMarks: readonly FreeMarkOnPage[];
  /** SHA-256 of the PDF as it was issued, hexadecimal; absent where that was not kept. */
  readonly pdfHash?: string;
  /** The id by which its record names the well, where that is not the one here. */
  readonly shownId?: string;
}

interface Row {
  readonly well_id: string;
  readonly number: number;
  readonly revision: number;
  readonly paper: string;
  readonly languages: string;
  readonly file_name: string;
  readonly record_hash: string;
  readonly issued_at: string;
  /** JSON. */
  readonly free_marks: string;
  readonly pdf_hash: string | null;
  readonly shown_id: string | null;
}

function rowOf(issue: IssueLine): Row {
  return {
    well_id: issue.wellId,
    number: issue.number,
    revision: issue.revision,
    paper: issue.paper,
    languages: issue.languages,
    file_name: issue.fileName,
    record_hash: issue.recordHash,
    issued_at: issue.issuedAt,
    free_marks: JSON.stringify(issue.freeMarks),
    pdf_hash: issue.pdfHash ?? null,
    shown_id: issue.shownId ?? null,
  };
}

function issueOf(row: Row): IssueLine {
  return {
    wellId: row.well_id,
    number: row.number,
    revision: row.revision,
    paper: row.paper,
    languages: row.languages,
    fileName: row.file_name,
    recordHash: row.record_hash,
    issuedAt: row.issued_at,
    freeMarks: JSON.parse(row.free_marks) as FreeMarkOnPage[],
    ...(row.pdf_hash !== null && { pdfHash: row.pdf_hash }),
    ...(row.shown_id !== null && { shownId: row.shown_id }),
  };
}

const columns =
  'well_id, number, revision, paper, languages, file_name, record_hash, issued_at, free_marks, pdf_hash, shown_id';

/** First to last. */
export function listIssues(db: ReadHandle, wellId: string): IssueLine[] {
  return db
    .prepare<[string], Row>(`SELECT ${columns} FROM issue WHERE well_id = ? ORDER BY number`)
    .all(wellId)
    .map(issueOf);
}

/** Of all wells, those in the bin too. */
export function everyIssue(db: ReadHandle): IssueLine[] {
  return db
    .prepare<[], Row>(`SELECT ${columns} FROM issue ORDER BY well_id, number`)
    .all()
    .map(issueOf);
}

export function findIssue(db: ReadHandle, wellId: string, number: number): IssueLine | undefined {
  const row = db
    .prepare<[string, number], Row>(`SELECT ${columns} FROM issue WHERE well_id = ? AND number = ?`)
    .get(wellId, number);
  return row && issueOf(row);
}

/** The paper, and what each signature added, first to last. */
export function issueParts(db: ReadHandle, wellId: string, number: number): Uint8Array[] {
  const key = [wellId, number] as const;
  const paper = db
    .prepare<[string, number], { pdf: Uint8Array }>(
      'SELECT pdf FROM issue WHERE well_id = ? AND number = ?',
    )
    .get(...key);
  const seals = db
    .prepare<[string, number], { added: Uint8Array }>(
      'SELECT added FROM issue_seal WHERE well_id = ? AND number = ? ORDER BY seal',
    )
    .all(...key);
  return paper ? [paper.pdf, ...seals.map(({ added }) => added)] : [];
}

export function putIssue(db: WriteHandle, issue: IssueLine, pdf: Uint8Array): void {
  db.prepare<[Row & { pdf: Uint8Array }]>(
    `INSERT INTO issue (${columns}, pdf) VALUES (@well_id, @number, @revision, @paper, @languages,
     @file_name, @record_hash, @issued_at, @free_marks, @pdf_hash, @shown_id, @pdf)`,
  ).run({ ...rowOf(issue), pdf });
}

export interface NewSeal {
  readonly wellId: string;
  readonly number: number;
  /** From 1. */
  readonly seal: number;
  readonly sealedAt: string;
  readonly added: Uint8Array;
}

export function putSeal(db: WriteHandle, seal: NewSeal): void {
  db.prepare<[NewSeal]>(
    `INSERT INTO issue_seal (well_id, number, seal, sealed_at, added)
     VALUES (@wellId, @number, @seal, @sealedAt, @added)`,
  ).run(seal);
}
