import type { Mark } from '../record/headworks.ts';
import type { PaperWish } from './papersShape.ts';

/** Who signed a paper and whether that still holds. */
export interface SealRow {
  readonly state: 'holds' | 'addedTo' | 'changed' | 'unreadable';
  readonly name?: string;
  readonly role?: string;
  /** ISO 8601, by the signer's computer. */
  readonly at?: string;
  /** SHA-256 of the certificate. */
  readonly fingerprint?: string;
  readonly selfSigned?: boolean;
  readonly sentence: string;
}

/** A paper as it was issued. */
export interface IssueRow {
  /** From 1, over all papers of the well. */
  readonly number: number;
  readonly revision: number;
  readonly paper: string;
  readonly languages: string;
  readonly fileName: string;
  /** SHA-256 of the record that it shows. */
  readonly recordHash: string;
  /** ISO 8601. */
  readonly issuedAt: string;
  readonly seals: readonly SealRow[];
}

/** A certificate that signs on this computer. */
export interface IdentityRow {
  /** SHA-256 of the certificate. */
  readonly fingerprint: string;
  readonly name: string;
  readonly organisation?: string;
  /** ISO 8601. */
  readonly validTo: string;
  readonly selfSigned: boolean;
}

/** What is known of the record that a PDF says it shows. */
export interface FoundPaper {
  readonly number?: string;
  readonly revision?: number;
  readonly recordHash?: string;
  /**
   * `same`: the archive has this record. `other`: it has the well, yet no revision of it is this
   * record. `unknown`: it does not have the well. Absent where the PDF names no record.
   */
  readonly held?: 'same' | 'other' | 'unknown';
  /** The well in the archive. */
  readonly wellId?: string;
  readonly state: 'none' | 'whole' | 'addedTo' | 'changed';
  readonly seals: readonly SealRow[];
  readonly sentence: string;
}

export interface IssueCalls {
  'issues.list': { takes: { id: string }; gives: readonly IssueRow[] };
  /**
   * Freezes a paper of the newest revision. Refused as `unexplained` while an error among the
   * findings is not explained, as `unrevised` while something typed is in no revision.
   */
  'issues.make': { takes: { id: string; paper: PaperWish }; gives: IssueRow };
  /** The paper with all signatures, base64. */
  'issues.pdf': {
    takes: { id: string; number: number };
    gives: { fileName: string; pdf: string };
  };
  /** Signs an issued paper. It shows in the free box of the role, where the paper has one. */
  'issues.seal': {
    takes: {
      id: string;
      number: number;
      fingerprint: string;
      passphrase: string;
      role: Mark['role'];
      place?: string;
    };
    gives: IssueRow;
  };
}

export interface IdentityCalls {
  'identities.list': { takes: Record<string, never>; gives: readonly IdentityRow[] };
  /** Makes a certificate for a person and keeps its key under the passphrase. */
  'identities.make': {
    takes: { name: string; organisation?: string; passphrase: string };
    gives: IdentityRow;
  };
  /** Takes a signer's own PKCS#12 file, base64, and keeps it as it is. */
  'identities.take': { takes: { file: string; passphrase: string }; gives: IdentityRow };
  'identities.remove': { takes: { fingerprint: string }; gives: null };
}

export interface SealCalls {
  /** What a PDF, base64, says of itself: whose well, who signed, whether it is whole. */
  'seals.read': { takes: { pdf: string }; gives: FoundPaper };
}
