import { entriesOf, skipSpace, type Span } from '../pdf/scan.ts';

/** A signature's dictionary in a PDF, and what it says it covers. */
export interface Signature {
  /** Where values of its dictionary stand; empty where it cannot be read. */
  readonly entries: ReadonlyMap<string, Span>;
  /** The four numbers of /ByteRange. */
  readonly range: readonly [number, number, number, number];
}

const byteRange = /\/ByteRange\s*\[\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s*\]/g;

function entriesAround(text: string, at: number): ReadonlyMap<string, Span> {
  const head = text.lastIndexOf(' obj', at);
  try {
    return entriesOf(text, skipSpace(text, head + ' obj'.length));
  } catch {
    return new Map();
  }
}

/** Every signature that a PDF shows, in the order of the file, wherever it may be reached from. */
export function findSignatures(text: string): readonly Signature[] {
  return [...text.matchAll(byteRange)].map((found) => {
    const [, ...numbers] = found.map(Number);
    const range = numbers as unknown as Signature['range'];
    return { entries: entriesAround(text, found.index), range };
  });
}

/**
 * Whether a signature speaks for all from the file's first byte up to an end within it, but for
 * its own place, brackets and all.
 */
export function coversItsPart({ entries, range }: Signature, fileLength: number): boolean {
  const [start, before, after, rest] = range;
  const place = entries.get('Contents');
  return (
    start === 0 && place?.start === before && place.end === after && after + rest <= fileLength
  );
}
