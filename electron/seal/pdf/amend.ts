import { objectAt, referenceAt, valueAt, type PdfDocument } from './document.ts';
import { entriesOf, membersOf, type Span } from './scan.ts';

/** A dictionary's text with an entry set anew. `span` is where the dictionary stands. */
function withEntry(document: PdfDocument, span: Span, key: string, value: string): string {
  const old = entriesOf(document.text, span.start).get(key);
  const { text } = document;
  if (old) return text.slice(span.start, old.start) + value + text.slice(old.end, span.end);
  return `${text.slice(span.start, span.end - 2)}/${key} ${value}\n>>`;
}

/** The dictionary of an object with an entry set anew. */
export function amended(document: PdfDocument, number: number, key: string, value: string): string {
  return withEntry(document, objectAt(document, number), key, value);
}

/** Members of an entry that is an array, there or as an object of its own. */
export function listOf(document: PdfDocument, number: number, key: string): readonly string[] {
  const entry = entriesOf(document.text, objectAt(document, number).start).get(key);
  if (!entry) return [];
  const inPlace = document.text[entry.start] === '[';
  const span = inPlace ? entry : objectAt(document, referenceAt(document, entry));
  return membersOf(document.text, span.start).map((member) => valueAt(document, member));
}

/** The dictionary of an object with one more member at the end of an array. */
export function lengthened(
  document: PdfDocument,
  number: number,
  key: string,
  member: string,
): string {
  return amended(
    document,
    number,
    key,
    `[${[...listOf(document, number, key), member].join(' ')}]`,
  );
}
