import type { PaperMm } from '../../base/units.ts';
import type { Kit } from '../kit.ts';
import { lettered, wrapped, type TextLook } from '../letters.ts';
import type { Piece } from '../parts/flow/part.ts';
import { lineHeight, solid } from '../pens.ts';
import { line } from '../shapes.ts';

const lettering = 'normal' as const;
const pitch = lineHeight(lettering);

/** A heading over a thin rule that stands with what is under it. */
export function headingPiece(kit: Kit, title: string, width: PaperMm): Piece {
  const look = { lettering, face: 'bold' } as const;
  const lines = wrapped(kit, title, width, look);
  const height = lines.length * pitch + 2.4;
  return {
    height,
    keeps: true,
    draw: (x, y) => [
      ...lettered(kit, lines, x, y, look),
      line([x, y + height - 1.6], [x + width, y + height - 1.6], solid('thin')),
    ],
  };
}

/** A paragraph line by line; its first two and its last two lines stay together. */
export function prosePieces(
  kit: Kit,
  text: string,
  width: PaperMm,
  look: Pick<TextLook, 'face'> = {},
): Piece[] {
  const whole = { lettering, ...look } as const;
  const lines = wrapped(kit, text, width, whole);
  return lines.map((one, at) => ({
    height: pitch + (at === lines.length - 1 ? 1.4 : 0),
    keeps: at < lines.length - 1 && (at === 0 || at === lines.length - 2),
    draw: (x, y) => lettered(kit, [one], x, y, whole),
  }));
}

/** A heading with paragraphs under it. */
export function chapterPieces(
  kit: Kit,
  title: string,
  says: readonly string[],
  width: PaperMm,
): Piece[] {
  return [headingPiece(kit, title, width), ...says.flatMap((one) => prosePieces(kit, one, width))];
}
