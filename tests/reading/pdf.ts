import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Point, ReadPage, ReadPath, ReadText } from './page.ts';

type Matrix = readonly [number, number, number, number, number, number];

const mmPerPoint = 25.4 / 72;

/** How pdfjs writes an outline: a kind, then its numbers (`DrawOPS` in its source). */
const numbersOf: Readonly<Record<number, number>> = { 0: 2, 1: 2, 2: 6, 3: 4, 4: 0 };

const fills = [OPS.fill, OPS.eoFill, OPS.fillStroke, OPS.eoFillStroke];
const strokes = [OPS.stroke, OPS.fillStroke, OPS.eoFillStroke];

/** First `inner`, then `outer`. */
function times(inner: Matrix, outer: Matrix): Matrix {
  const [a, b, c, d, e, f] = inner;
  const [g, h, i, j, k, l] = outer;
  return [
    a * g + b * i,
    a * h + b * j,
    c * g + d * i,
    c * h + d * j,
    e * g + f * i + k,
    e * h + f * j + l,
  ];
}

function place([a, b, c, d, e, f]: Matrix, x: number, y: number): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

interface State {
  matrix: Matrix;
  lineWidth: number;
  fontSize: number;
}

/** Follows the operators of one page, as a viewer does, and notes what is painted where. */
class Follower {
  readonly texts: ReadText[] = [];
  readonly paths: ReadPath[] = [];
  #state: State;
  readonly #kept: State[] = [];
  #textMatrix: Matrix = [1, 0, 0, 1, 0, 0];

  constructor(toMm: Matrix) {
    this.#state = { matrix: toMm, lineWidth: 1, fontSize: 0 };
  }

  follow(operator: number, given: readonly unknown[]): void {
    if (operator === OPS.save) this.#kept.push({ ...this.#state });
    else if (operator === OPS.restore) this.#state = this.#kept.pop()!;
    else if (operator === OPS.transform)
      this.#state.matrix = times(given as unknown as Matrix, this.#state.matrix);
    else if (operator === OPS.setLineWidth) this.#state.lineWidth = given[0] as number;
    else if (operator === OPS.constructPath)
      this.#notePath(given[0] as number, given[1] as readonly [ArrayLike<number> | null]);
    else this.#followText(operator, given);
  }

  #followText(operator: number, given: readonly unknown[]): void {
    if (operator === OPS.beginText) this.#textMatrix = [1, 0, 0, 1, 0, 0];
    else if (operator === OPS.setFont) this.#state.fontSize = given[1] as number;
    else if (operator === OPS.setTextMatrix)
      this.#textMatrix = Array.from(given[0] as Matrix) as unknown as Matrix;
    else if (operator === OPS.moveText) {
      const [x, y] = given as readonly [number, number];
      this.#textMatrix = times([1, 0, 0, 1, x, y], this.#textMatrix);
    } else if (operator === OPS.showText)
      this.#noteText(given[0] as readonly ({ unicode: string } | number)[]);
  }

  #noteText(glyphs: readonly ({ unicode: string } | number)[]): void {
    const whole = times(this.#textMatrix, this.#state.matrix);
    const text = glyphs.map((glyph) => (typeof glyph === 'number' ? '' : glyph.unicode)).join('');
    this.texts.push({
      text,
      x: whole[4],
      y: whole[5],
      em: this.#state.fontSize * Math.hypot(whole[0], whole[1]),
      turn: (Math.atan2(whole[1], whole[0]) * 180) / Math.PI,
    });
  }

  #notePath(painting: number, [data]: readonly [ArrayLike<number> | null]): void {
    const filled = fills.includes(painting);
    const stroked = strokes.includes(painting);
    if (!data || (!filled && !stroked)) return;
    const { matrix, lineWidth } = this.#state;
    const stroke = stroked ? lineWidth * Math.hypot(matrix[0], matrix[1]) : 0;
    const points = pointsOf(data).map(([x, y]) => place(matrix, x, y));
    this.paths.push({ filled, stroked, stroke, points });
  }
}

function pointsOf(data: ArrayLike<number>): Point[] {
  const points: Point[] = [];
  for (let at = 0; at < data.length;) {
    const count = numbersOf[data[at]!]!;
    for (let n = at + 1; n <= at + count; n += 2) points.push([data[n]!, data[n + 1]!]);
    at += count + 1;
  }
  return points;
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const [left, bottom, right, top] = page.view as [number, number, number, number];
  const k = mmPerPoint;
  const follower = new Follower([k, 0, 0, -k, -left * k, top * k]);
  const { fnArray, argsArray } = await page.getOperatorList();
  fnArray.forEach((operator, at) =>
    follower.follow(operator, (argsArray[at] ?? []) as readonly unknown[]),
  );
  const { texts, paths } = follower;
  return { width: (right - left) * k, height: (top - bottom) * k, texts, paths };
}

/** Opens a PDF with pdfjs; for what `readPdf` does not tell. */
export function openPdf(bytes: Uint8Array) {
  return getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
}

/** Texts and outlines of a PDF by page, as pdfjs understands its operators. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const file = await openPdf(bytes);
  const pages: ReadPage[] = [];
  for (let number = 1; number <= file.numPages; number += 1)
    pages.push(await readPage(await file.getPage(number)));
  await file.cleanup();
  return pages;
}
