/** Marks of accents, which sorting passes over. */
const marks = /\p{M}/gu;

/** Digits with their count before them, so that a longer number comes after a shorter one. */
function counted(digits: string): string {
  const short = digits.replace(/^0+(?=\d)/, '');
  return String(short.length).padStart(3, '0') + short;
}

/**
 * A text by which others are put in order as people expect: `KB-2` before `KB-10`, capitals and
 * accents passed over, blanks and signs between words alike.
 */
export function sortKey(text: string): string {
  const plain = text.normalize('NFKD').replace(marks, '').toLowerCase();
  return plain
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/\d+/g, counted);
}
