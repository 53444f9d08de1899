/** A text as words are compared: without case, accents and ligatures, which tired hands leave out. */
export function folded(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replaceAll('œ', 'oe')
    .replaceAll('’', "'");
}
