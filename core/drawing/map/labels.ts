/** A sign on a map and the size of what may be written beside it, in one unit of length. */
export interface Named {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Top left corner of a label. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
}

interface Box extends LabelPlace {
  readonly width: number;
  readonly height: number;
}

/** Finds whether a box is free: looks only at what stands in the cells that it touches. */
class Ground {
  readonly #cells = new Map<string, Box[]>();
  readonly #side: number;

  constructor(side: number) {
    this.#side = side;
  }

  #touched({ x, y, width, height }: Box): string[] {
    const at = (value: number) => Math.floor(value / this.#side);
    const found: string[] = [];
    for (let column = at(x); column <= at(x + width); column += 1)
      for (let row = at(y); row <= at(y + height); row += 1) found.push(`${column} ${row}`);
    return found;
  }

  take(box: Box) {
    for (const cell of this.#touched(box)) {
      const there = this.#cells.get(cell);
      if (there) there.push(box);
      else this.#cells.set(cell, [box]);
    }
  }

  isFree(box: Box): boolean {
    return this.#touched(box).every(
      (cell) => !this.#cells.get(cell)?.some((other) => overlap(box, other)),
    );
  }
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function isInside(
  { x, y, width, height }: Box,
  frame?: { width: number; height: number },
): boolean {
  return !frame || (x >= 0 && y >= 0 && x + width <= frame.width && y + height <= frame.height);
}

/** To the right first, as people read; then left, above and below. */
function wishes({ x, y, width, height }: Named, gap: number): Box[] {
  const size = { width, height };
  return [
    { x: x + gap, y: y - height / 2, ...size },
    { x: x - gap - width, y: y - height / 2, ...size },
    { x: x - width / 2, y: y - gap - height, ...size },
    { x: x - width / 2, y: y + gap, ...size },
  ];
}

/**
 * Places labels beside their signs so that none lies on another or on any sign; the first named
 * come first. Undefined where there is no room: such a label is left out. `gap` is from the sign's
 * middle to its label, and half of it is kept free round every sign. Labels stay in the frame
 * from (0, 0) to its width and height, where one is given.
 */
export function placeLabels(
  signs: readonly Named[],
  gap: number,
  frame?: { readonly width: number; readonly height: number },
): (LabelPlace | undefined)[] {
  const ground = new Ground(8 * gap);
  for (const { x, y } of signs)
    ground.take({ x: x - gap / 2, y: y - gap / 2, width: gap, height: gap });
  return signs.map((sign) => {
    const box = wishes(sign, gap).find((wish) => isInside(wish, frame) && ground.isFree(wish));
    if (!box) return undefined;
    ground.take(box);
    return { x: box.x, y: box.y };
  });
}
