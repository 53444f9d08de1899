import { linkAddress } from '../../base/linkAddress.ts';
import type { LinkItem } from '../../drawing/items.ts';
import { onPageDictionary, pageObject, write } from './inside.ts';
import { pointsPerMm } from './pointsPerMm.ts';
import type { Book, Sheet } from './sheet.ts';

export function paintLink({ book, number }: Sheet, link: LinkItem): void {
  const there = book.links.get(number);
  if (there) there.push(link);
  else book.links.set(number, [link]);
}

function points(value: number): string {
  return (value * pointsPerMm).toFixed(4);
}

function rectangle({ box }: LinkItem, pageHeight: number): string {
  const corners = [box.x, pageHeight - box.y - box.height, box.x + box.width, pageHeight - box.y];
  return corners.map(points).join(' ');
}

function targetOf(book: Book, { to }: LinkItem): string | undefined {
  if ('page' in to) {
    const top = points(book.heights[to.page - 1]!);
    return `/Dest [${pageObject(book.doc, to.page)} 0 R /XYZ null ${top} null]`;
  }
  const address = linkAddress(to.address)?.replace(/[\\()]/g, '\\$&');
  return address === undefined ? undefined : `/A <</S /URI /URI (${address})>>`;
}

/** /F 4 lets the link print, which PDF/A asks of every annotation (ISO 19005-2, 6.3.2). */
function annotation(book: Book, link: LinkItem, pageHeight: number): string {
  const target = targetOf(book, link);
  const place = `/Rect [${rectangle(link, pageHeight)}] /Border [0 0 0] /F 4`;
  return target === undefined ? '' : `<</Type /Annot /Subtype /Link ${place} ${target}>>`;
}

/**
 * Where a link leads to a page, the page is there. Looked at before the document is written: what
 * is thrown while jsPDF writes, jsPDF keeps to itself.
 */
function checkTargets({ links, heights }: Book): void {
  for (const { to } of [...links.values()].flat())
    if ('page' in to && heights[to.page - 1] === undefined)
      throw new Error(`A link leads to page ${to.page}, which the drawing has not`);
}

/** Has the links written when the document is. jsPDF's own are without /F. */
export function writeLinks(book: Book): void {
  checkTargets(book);
  onPageDictionary(book.doc, (number) => {
    const height = book.heights[number - 1]!;
    const all = (book.links.get(number) ?? []).map((link) => annotation(book, link, height));
    if (all.some(Boolean)) write(book.doc, `/Annots [${all.join('')}]`);
  });
}
