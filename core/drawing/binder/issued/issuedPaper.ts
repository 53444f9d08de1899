import type { BoundPaper } from '../boundPapers.ts';

/** What became of a signature: it holds, more was written after it, it does not hold, nobody can tell. */
export type SignatureState = 'holds' | 'addedTo' | 'changed' | 'unreadable';

export interface Signature {
  /** As in the certificate; empty where that does not tell. */
  readonly name: string;
  /** What the signer signed as, in the paper's language; empty where it does not tell. */
  readonly role: string;
  readonly state: SignatureState;
}

/** A PDF that was issued of a well and is kept as it was. Plain JSON. */
export interface IssuedPaper {
  readonly wellId: string;
  /** From 1, over all papers of the well. */
  readonly number: number;
  /** Absent of a kind that this version does not know. */
  readonly kind?: BoundPaper;
  /** Kind and size as the archive lists it. */
  readonly paper: string;
  /** BCP 47, joined by commas. */
  readonly languages: string;
  /** Revision that it shows, and the newest one of the well. */
  readonly revision: number;
  readonly newest: number;
  /** ISO 8601. */
  readonly issuedAt: string;
  readonly signatures: readonly Signature[];
  /** SHA-256 of the PDF with all its signatures, hexadecimal. */
  readonly hash: string;
}

/** Issued papers, and the folder beside the volumes that holds them, where they were copied. */
export interface IssuedPapers {
  readonly papers: readonly IssuedPaper[];
  readonly folder?: string;
}
