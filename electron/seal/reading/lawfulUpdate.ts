import { boxOf } from '../pdf/box.ts';
import { isFit } from '../pdf/box.ts';
import { composeSeal, type SealText } from '../pdf/composeSeal.ts';
import {
  dictionaryOf,
  objectAt,
  readDocument,
  referenceAt,
  valueAt,
  type PdfDocument,
} from '../pdf/document.ts';
import { nextNumber } from '../pdf/update.ts';
import type { SealBox } from '../seal.ts';
import { readSignatureText } from './readText.ts';

/** The compressed operators of a seal's drawing, as they stand. */
function drawingOf(document: PdfDocument, number: number): string {
  const length = dictionaryOf(document, number).get('Length')!;
  const from = objectAt(document, number).end + '\nstream\n'.length;
  return document.text.slice(from, from + Number(valueAt(document, length)));
}

/** How the seal with this signature shows: its field stands before it, or before its drawing. */
function shownOf(document: PdfDocument, signature: number): SealText['shown'] {
  const drawing = signature - 1;
  if (dictionaryOf(document, drawing).has('FT')) return undefined;
  const field = dictionaryOf(document, drawing - 1);
  const page = referenceAt(document, field.get('P'));
  const box = boxOf(document, page, field.get('Rect'));
  return { box, drawing: drawingOf(document, drawing) };
}

function textOf(document: PdfDocument, signature: number): SealText {
  const entries = dictionaryOf(document, signature);
  const { name = '', role = '', at = '', place } = readSignatureText(document.text, entries);
  const { start, end } = entries.get('Contents')!;
  const shown = shownOf(document, signature);
  return {
    name,
    role,
    at,
    ...(place === undefined ? {} : { place }),
    ...(shown ? { shown } : {}),
    room: (end - start - 2) / 2,
  };
}

/**
 * Where a seal that the program wrote shows; undefined where it does not, or where the end of the
 * document is no such seal.
 */
export function sealBoxAtEnd(pdf: Uint8Array): SealBox | undefined {
  try {
    const document = readDocument(pdf);
    return shownOf(document, nextNumber(document) - 1)?.box;
  } catch {
    return undefined;
  }
}

/**
 * Whether nothing but a seal was written between two states of a file: from what the seal says,
 * its update is made again, and has to be the same to the byte, but for the signature itself.
 * Never throws.
 */
export function isOnlyASeal(before: Uint8Array, after: Uint8Array): boolean {
  try {
    const next = readDocument(after);
    const seal = textOf(next, nextNumber(next) - 1);
    const document = readDocument(before);
    if (seal.shown && !isFit(document, seal.shown.box)) return false;
    const { update, gap } = composeSeal(document, seal);
    const written = next.text;
    return (
      written.length === before.length + update.length &&
      written.slice(before.length, gap.start + 1) ===
        update.slice(0, gap.start + 1 - before.length) &&
      written.slice(gap.end - 1) === update.slice(gap.end - 1 - before.length)
    );
  } catch {
    return false;
  }
}
