import { endOfValue, entriesOf, membersOf, skipSpace, Unparsed, type Span } from './scan.ts';

/** A PDF as far as adding to it needs: where its objects stand. */
export interface PdfDocument {
  readonly bytes: Uint8Array;
  /** One letter a byte. */
  readonly text: string;
  /** Where each object stands, by number; the newest of several. */
  readonly offsets: ReadonlyMap<number, number>;
  /** The newest trailer's dictionary. */
  readonly trailer: ReadonlyMap<string, Span>;
  /** Where the newest table of references stands. */
  readonly tableAt: number;
}

/** Each letter of the text is a byte: places in one are places in the other. */
export function letters(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}

export function valueAt({ text }: PdfDocument, { start, end }: Span): string {
  return text.slice(start, end);
}

function numberAt(text: string, pattern: RegExp, from: number): RegExpExecArray {
  pattern.lastIndex = from;
  const found = pattern.exec(text);
  if (!found) throw new Unparsed();
  return found;
}

interface Table {
  readonly offsets: ReadonlyMap<number, number>;
  readonly trailerAt: number;
}

/** A table of references in its classic form (ISO 32000-1, 7.5.4): lines of twenty bytes. */
function readTable(text: string, tableAt: number): Table {
  if (!text.startsWith('xref', tableAt)) throw new Unparsed();
  const offsets = new Map<number, number>();
  let at = skipSpace(text, tableAt + 4);
  while (!text.startsWith('trailer', at)) {
    const [head, first, count] = numberAt(text, /(\d+) (\d+) *(?:\r\n|\n|\r)/y, at);
    at += head.length;
    for (let entry = 0; entry < Number(count); entry += 1, at += 20) {
      const [, offset, , kind] = numberAt(text, /(\d{10}) (\d{5}) ([nf])[ \r\n]{2}/y, at);
      if (kind === 'n') offsets.set(Number(first) + entry, Number(offset));
    }
    at = skipSpace(text, at);
  }
  return { offsets, trailerAt: skipSpace(text, at + 'trailer'.length) };
}

function wholeNumber(text: string, span: Span | undefined): number | undefined {
  if (!span) return undefined;
  const word = text.slice(span.start, span.end);
  if (!/^\d+$/.test(word)) throw new Unparsed();
  return Number(word);
}

/**
 * Reads where the objects stand. Throws `Unparsed` for a PDF that keeps its references in another
 * way than as a table, or that is locked.
 */
export function readDocument(bytes: Uint8Array): PdfDocument {
  const text = letters(bytes);
  const mark = text.lastIndexOf('startxref');
  if (mark < 0 || !text.startsWith('%PDF-')) throw new Unparsed();
  const newest = Number(numberAt(text, /startxref\s+(\d+)\s+%%EOF/y, mark)[1]);
  const offsets = new Map<number, number>();
  const trailers: ReadonlyMap<string, Span>[] = [];
  for (let at: number | undefined = newest; at !== undefined;) {
    const table = readTable(text, at);
    for (const [number, offset] of table.offsets)
      if (!offsets.has(number)) offsets.set(number, offset);
    const trailer = entriesOf(text, table.trailerAt);
    trailers.push(trailer);
    const before = wholeNumber(text, trailer.get('Prev'));
    // Each table stands before the next: references that run in a circle end here.
    if (before !== undefined && before >= at) throw new Unparsed();
    at = before;
  }
  if (trailers[0]!.has('Encrypt') || trailers[0]!.has('XRefStm')) throw new Unparsed();
  return { bytes, text, offsets, trailer: trailers[0]!, tableAt: newest };
}

/** The number in `12 0 R`. */
export function referenceAt(document: PdfDocument, span: Span | undefined): number {
  const found = span && /^(\d+)\s+0\s+R$/.exec(valueAt(document, span));
  if (!found) throw new Unparsed();
  return Number(found[1]);
}

/** Where the value of an object stands. */
export function objectAt({ text, offsets }: PdfDocument, number: number): Span {
  const offset = offsets.get(number);
  if (offset === undefined) throw new Unparsed();
  const [head, named] = numberAt(text, /(\d+)\s+0\s+obj/y, offset);
  if (Number(named) !== number) throw new Unparsed();
  const start = skipSpace(text, offset + head.length);
  return { start, end: endOfValue(text, start) };
}

export function dictionaryOf(document: PdfDocument, number: number): ReadonlyMap<string, Span> {
  return entriesOf(document.text, objectAt(document, number).start);
}

/** Numbers of the pages' objects, in order. */
export function pagesOf(document: PdfDocument): readonly number[] {
  const catalog = dictionaryOf(document, referenceAt(document, document.trailer.get('Root')));
  const seen = new Set<number>();
  const below = (number: number): readonly number[] => {
    if (seen.has(number)) throw new Unparsed();
    seen.add(number);
    const kids = dictionaryOf(document, number).get('Kids');
    if (!kids) return [number];
    return membersOf(document.text, kids.start).flatMap((kid) => below(referenceAt(document, kid)));
  };
  return below(referenceAt(document, catalog.get('Pages')));
}
