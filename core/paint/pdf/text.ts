import type { FaceId } from '../../base/text/metrics.ts';
import { printable } from '../../base/text/printable.ts';
import type { TextItem } from '../../drawing/items.ts';
import { byteString } from './bytes.ts';
import type { Content } from './content.ts';
import { fontInDocument, glyphOf, operatorsOf } from './inside.ts';
import { numeral } from './numbers.ts';
import { setFill } from './path.ts';
import { pointsPerMm } from './pointsPerMm.ts';
import type { FaceInDocument, Sheet } from './sheet.ts';

/** jsPDF puts in the fonts that it wrote with: it writes a blank, which is taken away again. */
function addFace({ book: { doc, fontFiles }, number }: Sheet, face: FaceId): FaceInDocument {
  const name = `borefolio-${face}`;
  doc.addFileToVFS(`${name}.ttf`, byteString(fontFiles[face]));
  doc.addFont(`${name}.ttf`, name, 'normal');
  doc.setFont(name, 'normal');
  doc.text(' ', 0, 0);
  operatorsOf(doc, number).pop();
  return { font: fontInDocument(doc), glyphs: new Map() };
}

/** A face enters the document when its first text does. */
function faceOf(sheet: Sheet, face: FaceId): FaceInDocument {
  const { facesIn } = sheet.book;
  const known = facesIn.get(face);
  if (known) return known;
  const added = addFace(sheet, face);
  facesIn.set(face, added);
  return added;
}

/** Letters as the numbers of their glyphs; what has none is left out. */
function glyphsOf({ font, glyphs }: FaceInDocument, text: string): string {
  let digits = '';
  for (const letter of text) {
    const known = glyphs.get(letter);
    if (known !== undefined) {
      digits += known;
      continue;
    }
    const glyph = glyphOf(font, letter);
    glyphs.set(letter, glyph);
    digits += glyph;
  }
  return digits;
}

/** Where the baseline begins, and how it is turned: PDF turns anticlockwise. */
function placed(content: Content, { x, y, turn = 0 }: TextItem): string {
  if (turn === 0) return `${content.place(x, y)} Td`;
  const angle = (-turn * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return `${[c, s, -s, c].map(numeral).join(' ')} ${content.place(x, y)} Tm`;
}

export function paintText(sheet: Sheet, item: TextItem): void {
  const { content } = sheet;
  const text = printable(item.text);
  if (text === '') return;
  const face = faceOf(sheet, item.face);
  setFill(content, item.ink);
  content.set('font', `/${face.font.id} ${numeral(item.em * pointsPerMm)} Tf`);
  content.write(`BT ${placed(content, item)} <${glyphsOf(face, text)}> Tj ET`);
}
