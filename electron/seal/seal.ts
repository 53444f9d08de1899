import type { KeyObject } from 'node:crypto';
import type { Result } from '../../core/base/result.ts';

/** Whom a seal names, and what signs in that name. Lives in memory only. */
export interface Signer {
  /** As in the certificate. */
  readonly name: string;
  readonly organisation?: string;
  /** DER. */
  readonly certificate: Uint8Array;
  /** Certificates of those who issued it, DER; none for one that the program made. */
  readonly issuers: readonly Uint8Array[];
  /** RSA or ECDSA. */
  readonly key: KeyObject;
  /** SHA-256 of the certificate: capital hexadecimal digits in pairs with colons between. */
  readonly fingerprint: string;
  readonly selfSigned: boolean;
  /** ISO 8601. */
  readonly validFrom: string;
  readonly validTo: string;
}

/** What an identity is made from. */
export interface IdentityWish {
  readonly name: string;
  readonly organisation?: string;
  /** At least `shortestPassphrase` letters. */
  readonly passphrase: string;
  /** ISO 8601. */
  readonly now: string;
  readonly validYears: number;
}

export interface Identity {
  /** What is kept: the certificate open, the key under the passphrase. JSON in UTF-8. */
  readonly file: Uint8Array;
  readonly signer: Signer;
}

/** `makeIdentity.ts`. Refuses `noName`, `shortPassphrase`. */
export type MakeIdentity = (wish: IdentityWish) => Promise<Result<Identity>>;

/**
 * `openIdentity.ts`, and `openPkcs12.ts` for what another program made; `now` is ISO 8601.
 * Refuses `notAnIdentity`, `wrongPassphrase`, `expiredCertificate`, `earlyCertificate`,
 * `missingKey`; and `oldCipher`, `foreignKey` for kinds that the program does not know.
 */
export type OpenIdentity = (
  file: Uint8Array,
  passphrase: string,
  now: string,
) => Promise<Result<Signer>>;

/** Where a seal shows, in mm from the page's top left corner. */
export interface SealBox {
  /** Counted from 1. */
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface SealDetails {
  /** What the signer signs as, in words: /Reason of the signature. */
  readonly role: string;
  readonly place?: string;
  /** ISO 8601: the computer's clock, since there is no other. */
  readonly at: string;
  /** Without one the seal does not show on the page. */
  readonly shown?: ShownSeal;
}

export interface ShownSeal {
  readonly box: SealBox;
  /** Lines of text from the top: name, role, day, as the paper's language has them. */
  readonly lines: readonly string[];
  /** TrueType file whose outlines draw the lines. */
  readonly face: Uint8Array;
}

/**
 * `sealPdf.ts`: the PDF with one more seal, appended. No earlier byte changes, so seals before it
 * stay as they were. Refuses `expiredCertificate`, `earlyCertificate`, `notSealable`, `badBox`,
 * `brokenBefore`.
 */
export type SealPdf = (pdf: Uint8Array, signer: Signer, details: SealDetails) => Result<Uint8Array>;

/**
 * What became of one seal. `holds`: nothing under it was changed, and nothing but later seals
 * came after it. `addedTo`: what it covers is as it was, yet something else came after it.
 * `changed`: what it covers was changed. `unreadable`: it cannot be read at all.
 */
export type SealState = 'holds' | 'addedTo' | 'changed' | 'unreadable';

/** One signature of a PDF as it was found. What could not be read is absent. */
export interface FoundSeal {
  /** Counted from 1, in the order of the file. */
  readonly number: number;
  readonly state: SealState;
  readonly name?: string;
  readonly organisation?: string;
  readonly role?: string;
  readonly place?: string;
  /** ISO 8601, as the signer's computer had it. */
  readonly at?: string;
  readonly fingerprint?: string;
  readonly selfSigned?: boolean;
  /** Whether the certificate was valid at that moment. */
  readonly inTime?: boolean;
  /** Bytes of the file, from its first, up to which this seal speaks. */
  readonly coversTo: number;
  readonly coversAll: boolean;
  readonly digestHolds: boolean;
  readonly signatureHolds: boolean;
  /** Where it shows, when it does. */
  readonly box?: SealBox;
  readonly sentence: string;
}

/** `none`: no seal. `whole`: every seal holds and the last covers the file to its end. */
export type SealedState = 'none' | 'whole' | 'addedTo' | 'changed';

export interface FoundSeals {
  readonly state: SealedState;
  /** True for `whole` alone. */
  readonly whole: boolean;
  readonly seals: readonly FoundSeal[];
  readonly sentence: string;
}

/** `readSeals.ts`. Never throws for a file at fault. */
export type ReadSeals = (pdf: Uint8Array) => FoundSeals;

/** Letters of the shortest passphrase that is taken. */
export const shortestPassphrase = 8;
