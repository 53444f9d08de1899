import { linkAddress } from '../../base/linkAddress.ts';
import type { LinkItem, Page } from '../../drawing/items.ts';
import { onPageDictionary, pageObject, write } from './inside.ts';
import { pointsPerMm, type Book, type Sheet } from './sheet.ts';

function pageOf({ drawing }: Book, number: number): Page {
  const page = drawing.pages[number - 1];
  if (!page) throw new Error(`A link leads to page ${number}, which the drawing has not`);
  return page;
}

/**
 * Links are written with their page, at the end. Where they lead is looked up now: what is thrown
 * while jsPDF writes, jsPDF keeps to itself.
 */
export function paintLink({ book, number }: Sheet, link: LinkItem): void {
  if ('page' in link.to) pageOf(book, link.to.page);
  book.links.set(number, [...(book.links.get(number) ?? []), link]);
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
    const top = points(pageOf(book, to.page).height);
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

/** Has the links written when the document is. jsPDF's own are without /F. */
export function writeLinks(book: Book): void {
  onPageDictionary(book.doc, (number) => {
    const { height } = pageOf(book, number);
    const all = (book.links.get(number) ?? []).map((link) => annotation(book, link, height));
    if (all.some(Boolean)) write(book.doc, `/Annots [${all.join('')}]`);
  });
}
