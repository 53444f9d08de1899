import { jsPDF } from 'jspdf';

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

/** A font of the document. */
export interface FontInDocument {
  /** Name by which content calls it. */
  readonly id: string;
}

interface Packed {
  readonly data: string;
  readonly reverseChain: string;
}

/** Parts that all documents share. */
interface Shared {
  processDataByFilters(data: string, filters: readonly string[]): Packed;
  pdfEscape16(text: string, font: FontInDocument): string;
}

const shared = jsPDF.API as unknown as Shared;

/** jsPDF's own, which stands aside while a document is written. */
const usualFilters = shared.processDataByFilters;

/** What jsPDF has and does not declare. Every use of its inner parts goes through this file. */
interface Undeclared {
  readonly internal: {
    write(...words: string[]): void;
    getPageInfo(page: number): { objId: number };
    newObject(): number;
    readonly pages: string[][];
    readonly collections: { readonly addImage_images?: Readonly<Record<string, HeldPicture>> };
  };
  getFont(): FontInDocument;
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

/** Bytes as the filter FlateDecode reads them, packed by jsPDF's own means. */
export function usualDeflate(letters: string): string {
  return usualFilters(letters, ['FlateEncode']).data;
}

/** The operators of a page (from 1) that were written so far; what is pushed is written behind. */
export function operatorsOf(doc: jsPDF, page: number): string[] {
  return undeclared(doc).internal.pages[page]!;
}

/** The font that was chosen last. */
export function fontInDocument(doc: jsPDF): FontInDocument {
  return undeclared(doc).getFont();
}

/**
 * Number of a letter's glyph, four hexadecimal digits, which the font in the document has from
 * then on; empty where the font has none.
 */
export function glyphOf(font: FontInDocument, letter: string): string {
  return shared.pdfEscape16(letter, font);
}

/** The whole document, whose streams are packed by `pack`. */
export function documentBytes(doc: jsPDF, pack: (letters: string) => string): Uint8Array {
  shared.processDataByFilters = (data, filters) =>
    filters.includes('FlateEncode')
      ? { data: pack(data), reverseChain: '/FlateDecode' }
      : usualFilters(data, filters);
  try {
    return new Uint8Array(doc.output('arraybuffer'));
  } finally {
    shared.processDataByFilters = usualFilters;
  }
}
