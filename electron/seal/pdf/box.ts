import type { SealBox } from '../seal.ts';
import { dictionaryOf, pagesOf, valueAt, type PdfDocument } from './document.ts';
import { membersOf, Unparsed, type Span } from './scan.ts';

/** PDF measures in points of 1/72 inch. */
const pointsPerMm = 72 / 25.4;
/** No seal needs more of a page, in mm; one that covers a page would hide what others sealed. */
const widest = 120;
const highest = 60;

function numbersAt(document: PdfDocument, span: Span | undefined): readonly number[] {
  if (!span) throw new Unparsed();
  const numbers = membersOf(document.text, span.start).map((one) => Number(valueAt(document, one)));
  if (numbers.length !== 4 || !numbers.every(Number.isFinite)) throw new Unparsed();
  return numbers;
}

/** Width and height of a page in points; its corner must be the origin, as the program's are. */
function sizeOf(document: PdfDocument, page: number): readonly [number, number] {
  const entries = dictionaryOf(document, page);
  const [left, bottom, width, height] = numbersAt(document, entries.get('MediaBox'));
  if (left !== 0 || bottom !== 0 || entries.has('Rotate')) throw new Unparsed();
  return [width!, height!];
}

/** What a box may lie beyond a limit, in mm: it is read back from rounded corners. */
const slack = 0.01;

/** Whether a box lies on its page and is no larger than a seal may be. */
export function isFit(document: PdfDocument, { page, x, y, width, height }: SealBox): boolean {
  const number = pagesOf(document)[page - 1];
  if (number === undefined) return false;
  const [right, bottom] = sizeOf(document, number).map((points) => points / pointsPerMm) as [
    number,
    number,
  ];
  const within = (start: number, length: number, end: number) =>
    start >= -slack && length > 0 && start + length <= end + slack;
  const small = width <= widest + slack && height <= highest + slack;
  return small && within(x, width, right) && within(y, height, bottom);
}

/** Points to the ten thousandth, as they are written. */
const written = (value: number) => Number(value.toFixed(4));

/** A box as PDF writes it: its corners from the page's bottom left, and from its own. */
export interface WrittenBox {
  readonly rectangle: string;
  readonly size: string;
}

/** `page` is the page's object. The size comes from the corners, so that both can be read back. */
export function writeBox(document: PdfDocument, page: number, box: SealBox): WrittenBox {
  const height = sizeOf(document, page)[1] / pointsPerMm;
  const { x, y } = box;
  const corners = [x, height - y - box.height, x + box.width, height - y];
  const [left, bottom, right, top] = corners.map((mm) => written(mm * pointsPerMm)) as [
    number,
    number,
    number,
    number,
  ];
  return {
    rectangle: `[${[left, bottom, right, top].join(' ')}]`,
    size: `[0 0 ${written(right - left)} ${written(top - bottom)}]`,
  };
}

/** The box that a rectangle was written from. */
export function boxOf(document: PdfDocument, page: number, rectangle: Span | undefined): SealBox {
  const [left, bottom, right, top] = numbersAt(document, rectangle);
  const height = sizeOf(document, page)[1];
  const mm = (value: number) => value / pointsPerMm;
  return {
    page: pagesOf(document).indexOf(page) + 1,
    x: mm(left!),
    y: mm(height - top!),
    width: mm(right! - left!),
    height: mm(top! - bottom!),
  };
}
