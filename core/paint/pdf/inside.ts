import type { jsPDF } from 'jspdf';

/** A picture as jsPDF holds it, before the document is written. Strings have one letter a byte. */
export interface HeldPicture {
  readonly alias: string;
  readonly width: number;
  readonly height: number;
  data: string;
  colorSpace: string;
  bitsPerComponent: number;
  filter: string | undefined;
  decodeParameters: string | undefined;
  /** Clearness by dot. */
  sMask: string | undefined;
  readonly sMaskBitsPerComponent?: number | undefined;
  readonly palette?: readonly number[] | undefined;
}

/** What jsPDF has and does not declare. Every use of its inner parts goes through this file. */
interface Undeclared {
  readonly internal: {
    write(...words: string[]): void;
    getPageInfo(page: number): { objId: number };
    newObject(): number;
    readonly collections: { readonly addImage_images?: Readonly<Record<string, HeldPicture>> };
  };
  processDataByFilters(data: string, filters: readonly string[]): { data: string };
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

/** `writeObjects` is called once all resources are written and before Info and catalogue are. */
export function onResourcesWritten(doc: jsPDF, writeObjects: () => void): void {
  doc.internal.events.subscribe('postPutResources', writeObjects);
}

/** Begins an object of the document and gives its number; `write` fills it. */
export function beginObject(doc: jsPDF): number {
  return undeclared(doc).internal.newObject();
}

/** A picture that was placed under a name. */
export function heldPicture(doc: jsPDF, name: string): HeldPicture | undefined {
  const all = Object.values(undeclared(doc).internal.collections.addImage_images ?? {});
  return all.find(({ alias }) => alias === name);
}

/** Bytes as the filter FlateDecode reads them. */
export function deflated(doc: jsPDF, bytes: string): string {
  return undeclared(doc).processDataByFilters(bytes, ['FlateEncode']).data;
}
