import type { jsPDF } from 'jspdf';

/** What jsPDF has and does not declare. Every use of its inner parts goes through this file. */
interface Undeclared {
  readonly internal: {
    write(...words: string[]): void;
    getPageInfo(page: number): { objId: number };
  };
  readonly __private__: { setPdfVersion(version: string): void };
}

function undeclared(doc: jsPDF): Undeclared {
  return doc as unknown as Undeclared;
}

/** Writes operators or dictionary entries where the document stands. */
export function write(doc: jsPDF, words: string): void {
  undeclared(doc).internal.write(words);
}

export function setPdfVersion(doc: jsPDF, version: string): void {
  undeclared(doc).__private__.setPdfVersion(version);
}

/** Number of the object that a page (from 1) is written as; known once writing has begun. */
export function pageObject(doc: jsPDF, page: number): number {
  return undeclared(doc).internal.getPageInfo(page).objId;
}

/** `addToPage` is called for each page (from 1) while its dictionary is being written. */
export function onPageDictionary(doc: jsPDF, addToPage: (page: number) => void): void {
  doc.internal.events.subscribe('putPage', ({ pageNumber }: { pageNumber: number }) =>
    addToPage(pageNumber),
  );
}

/** `addToCatalog` is called while the document's catalogue is being written. */
export function onCatalog(doc: jsPDF, addToCatalog: () => void): void {
  doc.internal.events.subscribe('putCatalog', addToCatalog);
}
