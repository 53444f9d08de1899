/** A box by its top left corner. */
export interface GroundBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function overlap(a: GroundBox, b: GroundBox): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** Finds whether a box is free: looks only at what stands in the cells that it touches. */
export class Ground {
  readonly #cells = new Map<string, GroundBox[]>();
  readonly #side: number;

  constructor(side: number) {
    this.#side = side;
  }

  #touched({ x, y, width, height }: GroundBox): string[] {
    const at = (value: number) => Math.floor(value / this.#side);
    const found: string[] = [];
    for (let column = at(x); column <= at(x + width); column += 1)
      for (let row = at(y); row <= at(y + height); row += 1) found.push(`${column} ${row}`);
    return found;
  }

  take(box: GroundBox) {
    for (const cell of this.#touched(box)) {
      const there = this.#cells.get(cell);
      if (there) there.push(box);
      else this.#cells.set(cell, [box]);
    }
  }

  isFree(box: GroundBox): boolean {
    return this.#touched(box).every(
      (cell) => !this.#cells.get(cell)?.some((other) => overlap(box, other)),
    );
  }
}
