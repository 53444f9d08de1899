import { encode } from 'uqr';
import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { lettered, wrapped } from '../../letters.ts';
import { black, lineHeight } from '../../pens.ts';
import { group } from '../../shapes.ts';
import { outlineOf, type Squares } from './squares.ts';

/** ISO/IEC 18004 (from memory) asks for four modules of white all round. */
const quiet = 4;
/** A finer module is lost on a photocopy and to the lens of a telephone (common practice). */
const leastModule: PaperMm = 0.4;
const side: PaperMm = 21.4;
/** Widths of the code with its white and the words under it. */
export const wellCodeWidth: PaperMm = 22;
export const wellCodeHeight: PaperMm = 33.5;
/** Lines of the words under the code. */
const mostLines = 3;

const mostModules = Math.floor(side / leastModule) - 2 * quiet;

/** The squares of a code, with as much against dirt and folds as its size leaves. */
function squaresOf(text: string): Squares {
  const strong = encode(text, { ecc: 'M', border: 0 });
  return (strong.size <= mostModules ? strong : encode(text, { ecc: 'L', border: 0 })).data;
}

/** A QR code of a text with its quiet zone in a square of 21.4 mm, and small words what it is. */
export function drawWellCode(kit: Kit, text: string, x: PaperMm, y: PaperMm): Item {
  const squares = squaresOf(text);
  const module = side / (squares.length + 2 * quiet);
  const left = x + (wellCodeWidth - side) / 2 + quiet * module;
  const segments = outlineOf(squares, left, y + quiet * module, module);
  const words = wrapped(kit, kit.words.wellCode, wellCodeWidth - 2).slice(0, mostLines);
  const top = y + side + (wellCodeHeight - side - mostLines * lineHeight('small')) / 2;
  return group('wellCode', [
    { kind: 'path', segments, fill: black },
    ...lettered(kit, words, x + 1, top),
  ]);
}
