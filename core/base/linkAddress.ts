/** The kinds of address that a paper may lead to; scripts and files are not among them. */
const allowed = /^(https?:\/\/|mailto:)/i;

/** Halves of surrogate pairs: no letter, and nothing can encode them. */
const halfLetters = /\p{Cs}/gu;

/**
 * An address as both painters write it: percent-encoded to ASCII. Undefined where it is not one
 * that a paper may lead to, so that an address in a record can never run anything.
 */
export function linkAddress(address: string): string | undefined {
  if (!allowed.test(address)) return undefined;
  return address.replace(halfLetters, '').replace(/[^\x21-\x7e]/gu, encodeURIComponent);
}
