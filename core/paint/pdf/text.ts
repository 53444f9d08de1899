import type { FaceId } from '../../base/text/metrics.ts';
import { printable } from '../../base/text/printable.ts';
import type { TextItem } from '../../drawing/items.ts';
import { byteString } from './bytes.ts';
import { pointsPerMm, type Book, type Sheet } from './sheet.ts';

/** A face enters the document when its first text does. */
function faceName({ doc, facesIn, fontFiles }: Book, face: FaceId): string {
  const name = `borefolio-${face}`;
  if (facesIn.has(face)) return name;
  facesIn.add(face);
  doc.addFileToVFS(`${name}.ttf`, byteString(fontFiles[face]));
  doc.addFont(`${name}.ttf`, name, 'normal');
  return name;
}

/** Points, with as many decimals as the other numbers of the document have. */
function pointsOf(em: number): number {
  return Math.round(em * pointsPerMm * 10_000) / 10_000;
}

export function paintText({ book }: Sheet, item: TextItem): void {
  const { doc } = book;
  doc.setFont(faceName(book, item.face), 'normal');
  doc.setFontSize(pointsOf(item.em));
  doc.setTextColor(item.ink);
  // jsPDF turns anticlockwise.
  doc.text(printable(item.text), item.x, item.y, { angle: -(item.turn ?? 0) });
}
