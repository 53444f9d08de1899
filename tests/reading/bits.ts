import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Box } from '../../core/drawing/items.ts';

/** A page in black and white as a copier sees it: one byte a dot, 1 where there is ink. */
export interface Bits {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

/** A picture in grey (PGM, one byte a dot) cut at half grey. */
function cutAtHalf(pgm: Buffer): Bits {
  const [head = '', width = '', height = ''] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 64).toString('latin1')) ?? [];
  const dots = pgm.subarray(head.length).map((grey) => (grey < 128 ? 1 : 0));
  return { width: Number(width), height: Number(height), dots };
}

/** The first page of a PDF in one bit a dot, as poppler paints it. */
export function bitsOf(pdf: Uint8Array, dotsPerInch: number): Bits {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-bits-'));
  try {
    const [file, target] = [path.join(folder, 'paper.pdf'), path.join(folder, 'page')];
    writeFileSync(file, pdf);
    const options = ['-r', String(dotsPerInch), '-gray', '-singlefile', file, target];
    execFileSync('pdftoppm', options, { stdio: 'ignore' });
    return cutAtHalf(readFileSync(`${target}.pgm`));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A box of a page, millimetres; boxes of one size are of as many dots. */
export function cutOut(bits: Bits, dotsPerInch: number, { x, y, width, height }: Box): Bits {
  const dotsIn = (mm: number) => Math.round((mm * dotsPerInch) / 25.4);
  const [left, top, wide, high] = [dotsIn(x), dotsIn(y), dotsIn(width), dotsIn(height)];
  const dots = new Uint8Array(wide * high);
  for (let row = 0; row < high; row += 1) {
    const start = (top + row) * bits.width + left;
    dots.set(bits.dots.subarray(start, start + wide), row * wide);
  }
  return { width: wide, height: high, dots };
}

/** Share of the dots that are ink. */
export function inkOf({ dots }: Bits): number {
  return dots.reduce((sum, dot) => sum + dot, 0) / dots.length;
}

/**
 * How unlike two pictures of one size are: the dots that differ as a share of the ink of both, at
 * the shift by which they are most alike; 0 for the same pattern, 1 where no ink meets.
 */
export function unlike(a: Bits, b: Bits, across: number, down: number): number {
  let least = 1;
  for (let dy = -down; dy <= down; dy += 1)
    for (let dx = -across; dx <= across; dx += 1) least = Math.min(least, differing(a, b, dx, dy));
  return least;
}

function differing(a: Bits, b: Bits, dx: number, dy: number): number {
  let [apart, ink] = [0, 0];
  for (let y = Math.max(0, dy); y < Math.min(a.height, a.height + dy); y += 1)
    for (let x = Math.max(0, dx); x < Math.min(a.width, a.width + dx); x += 1) {
      const one = a.dots[y * a.width + x]!;
      const other = b.dots[(y - dy) * b.width + (x - dx)]!;
      apart += one ^ other;
      ink += one + other;
    }
  return ink === 0 ? 1 : apart / ink;
}
