import { beginObject, onCatalog, onResourcesWritten, pageObject, write } from './inside.ts';
import { numeral } from './numbers.ts';
import { textString } from './objects.ts';
import { pointsPerMm } from './pointsPerMm.ts';
import type { Book } from './sheet.ts';

/** A bookmark, and those under it. */
export interface Bookmark {
  readonly title: string;
  /** Page of the document, from 1. */
  readonly page: number;
  readonly under?: readonly Bookmark[];
}

/** A bookmark among the others; numbers count them from 1 in the order of writing, 0 is the root. */
interface Entry {
  readonly mark: Bookmark;
  readonly at: number;
  readonly parent: number;
  readonly before: number | undefined;
  after?: number;
  /** First and last of those under it. */
  ends?: readonly [number, number];
}

type Ends = Entry['ends'];

/** Puts bookmarks and those under them behind the entries; gives the first and last of them. */
function gather(marks: readonly Bookmark[], parent: number, entries: Entry[]): Ends | undefined {
  let before: Entry | undefined;
  let first: number | undefined;
  for (const mark of marks) {
    const entry: Entry = { mark, at: entries.length + 1, parent, before: before?.at };
    entries.push(entry);
    first ??= entry.at;
    if (before) before.after = entry.at;
    const ends = gather(mark.under ?? [], entry.at, entries);
    if (ends) entry.ends = ends;
    before = entry;
  }
  return first === undefined || !before ? undefined : [first, before.at];
}

function writeObject(book: Book, entries: string): void {
  for (const line of [`<<${entries}>>`, 'endobj']) write(book.doc, line);
}

/** ISO 32000-1, 12.3.3. What is under a bookmark is folded, which a count below 0 says. */
function entryOf(book: Book, entry: Entry, root: number): string {
  const { mark, parent, before, after, ends } = entry;
  const top = numeral(book.heights[mark.page - 1]! * pointsPerMm);
  const leads = `/Dest [${pageObject(book.doc, mark.page)} 0 R /XYZ null ${top} null]`;
  const reference = (name: string, at: number | undefined) =>
    at === undefined ? '' : ` /${name} ${root + at} 0 R`;
  return [
    `/Title ${textString(mark.title)} ${leads}`,
    ...[reference('Parent', parent), reference('Prev', before), reference('Next', after)],
    ...[reference('First', ends?.[0]), reference('Last', ends?.[1])],
    ends ? ` /Count ${-(mark.under ?? []).length}` : '',
  ].join('');
}

function writeEntries(book: Book, entries: readonly Entry[], [first, last]: readonly number[]) {
  const root = beginObject(book.doc);
  const open = entries.filter(({ parent }) => parent === 0).length;
  const ends = `/First ${root + first!} 0 R /Last ${root + last!} 0 R`;
  writeObject(book, `/Type /Outlines ${ends} /Count ${open}`);
  for (const entry of entries) {
    beginObject(book.doc);
    writeObject(book, entryOf(book, entry, root));
  }
  return root;
}

/**
 * Has the bookmarks written, and asks viewers to show them.
 * @throws where one leads to a page that the document has not.
 */
export function writeOutline(book: Book, marks: readonly Bookmark[]): void {
  const entries: Entry[] = [];
  const ends = gather(marks, 0, entries);
  const astray = entries.find(({ mark }) => book.heights[mark.page - 1] === undefined);
  if (astray) throw new Error(`A bookmark leads to page ${astray.mark.page}, which is not there`);
  if (!ends) return;
  let root = 0;
  onResourcesWritten(book.doc, () => (root = writeEntries(book, entries, ends)));
  onCatalog(book.doc, () => write(book.doc, `/Outlines ${root} 0 R /PageMode /UseOutlines`));
}
