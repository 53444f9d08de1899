import type { SealBox } from '../seal.ts';
import { amended, lengthened, listOf } from './amend.ts';
import { writeBox } from './box.ts';
import { dictionaryOf, pagesOf, referenceAt, type PdfDocument } from './document.ts';
import { writeMoment, writeString } from './strings.ts';
import { nextNumber, updateOf } from './update.ts';
import { Unparsed } from './scan.ts';

/** All that a seal says in the file, besides the signature itself. */
export interface SealText {
  readonly name: string;
  readonly role: string;
  readonly place?: string;
  /** ISO 8601. */
  readonly at: string;
  readonly shown?: {
    readonly box: SealBox;
    /** Operators that draw the seal, compressed, one letter a byte. */
    readonly drawing: string;
  };
  /** Bytes that the signature may take. */
  readonly room: number;
}

export interface ComposedSeal {
  /** What comes behind the document, one letter a byte; the signature's place holds zeros. */
  readonly update: string;
  /** The signature's place with its brackets, from the file's first byte. */
  readonly gap: { readonly start: number; readonly end: number };
}

/** Tells seals of this form from others: it stands in what they sign. */
export const ownMark = '<< /App << /Name /Borefolio >> >>';
const digits = 10;
const unfilledRange = `[0${` ${'0'.repeat(digits)}`.repeat(3)}]`;

/** ISO 32000-1, 12.8.1; ETSI EN 319 142-1 for the sub-filter. */
function signatureDictionary({ name, role, place, at, room }: SealText): string {
  return [
    '<<',
    '/Type /Sig',
    '/Filter /Adobe.PPKLite',
    '/SubFilter /ETSI.CAdES.detached',
    `/Name ${writeString(name)}`,
    `/Reason ${writeString(role)}`,
    ...(place === undefined ? [] : [`/Location ${writeString(place)}`]),
    `/M ${writeMoment(at)}`,
    `/Prop_Build ${ownMark}`,
    `/ByteRange ${unfilledRange}`,
    `/Contents <${'0'.repeat(2 * room)}>`,
    '>>',
  ].join('\n');
}

/** Draws by paths alone: PDF/A has no fonts that are not within. */
function appearance(size: string, drawing: string): string {
  const head = `<< /Type /XObject /Subtype /Form /BBox ${size} /Resources << >> /Filter /FlateDecode /Length ${drawing.length} >>`;
  return `${head}\nstream\n${drawing}\nendstream`;
}

interface Numbers {
  readonly page: number;
  readonly form: number;
  readonly field: number;
  readonly signature: number;
  /** The catalogue's, where it has to learn of the form. */
  readonly catalog?: number;
  readonly drawing?: number;
}

/** New objects stand in this order, the signature last. */
function numbersOf(document: PdfDocument, { shown }: SealText): Numbers {
  const catalog = referenceAt(document, document.trailer.get('Root'));
  const known = dictionaryOf(document, catalog).get('AcroForm');
  const page = pagesOf(document)[(shown?.box.page ?? 1) - 1];
  if (page === undefined) throw new Unparsed();
  let next = nextNumber(document);
  const form = known ? referenceAt(document, known) : next++;
  const field = next++;
  const drawing = shown ? { drawing: next++ } : {};
  return { page, form, field, ...drawing, signature: next, ...(known ? {} : { catalog }) };
}

/** Field and widget in one (ISO 32000-1, 12.7.4.5). /F 4 lets it print, as PDF/A asks. */
function fieldOf(document: PdfDocument, { shown }: SealText, numbers: Numbers, name: string) {
  const { page, signature, drawing } = numbers;
  const rectangle = shown ? writeBox(document, page, shown.box).rectangle : '[0 0 0 0]';
  const look = drawing === undefined ? '' : ` /AP << /N ${drawing} 0 R >>`;
  return `<< /Type /Annot /Subtype /Widget /FT /Sig /T (${name}) /F 4 /Rect ${rectangle} /P ${page} 0 R /V ${signature} 0 R${look} >>`;
}

function objectsOf(document: PdfDocument, seal: SealText): Map<number, string> {
  const numbers = numbersOf(document, seal);
  const { page, form, field, drawing, signature, catalog } = numbers;
  const reference = `${field} 0 R`;
  const fields = catalog === undefined ? listOf(document, form, 'Fields') : [];
  const objects = new Map<number, string>();
  if (catalog !== undefined) {
    objects.set(catalog, amended(document, catalog, 'AcroForm', `${form} 0 R`));
    objects.set(form, `<< /Fields [${reference}] /SigFlags 3 >>`);
  } else objects.set(form, lengthened(document, form, 'Fields', reference));
  objects.set(page, lengthened(document, page, 'Annots', reference));
  objects.set(field, fieldOf(document, seal, numbers, `Seal ${fields.length + 1}`));
  if (seal.shown && drawing !== undefined) {
    const { size } = writeBox(document, page, seal.shown.box);
    objects.set(drawing, appearance(size, seal.shown.drawing));
  }
  objects.set(signature, signatureDictionary(seal));
  return objects;
}

function filledRange(gap: ComposedSeal['gap'], end: number): string {
  const numbers = [gap.start, gap.end, end - gap.end];
  return `[0 ${numbers.map(String).join(' ')}]`.padEnd(unfilledRange.length);
}

/**
 * What has to be written behind a document to seal it, but for the signature. The same document
 * and text give the same bytes. Throws `Unparsed` for a document that cannot be added to.
 */
export function composeSeal(document: PdfDocument, seal: SealText): ComposedSeal {
  const raw = updateOf(document, objectsOf(document, seal));
  const rangeAt = raw.lastIndexOf(unfilledRange);
  const from = rangeAt + unfilledRange.length + '\n/Contents '.length;
  const before = document.text.length;
  const gap = { start: before + from, end: before + from + 2 * seal.room + 2 };
  const range = filledRange(gap, before + raw.length);
  const update = raw.slice(0, rangeAt) + range + raw.slice(rangeAt + unfilledRange.length);
  return { update, gap };
}
