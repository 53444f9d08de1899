/** Digits of a hash that a table shows: enough to tell files apart by eye. */
const shownDigits = 16;

/** The beginning of a hash in two groups. */
export function hashShown(hash: string): string {
  return hash.slice(0, shownDigits).replace(/.{8}(?=.)/g, '$& ');
}
