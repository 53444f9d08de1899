import { numeral } from './numbers.ts';
import { pointsPerMm } from './pointsPerMm.ts';

/** What of the pen and the letters was set last; an entry that is absent is not known. */
interface Settings {
  fill?: string;
  stroke?: string;
  width?: string;
  dash?: string;
  cap?: string;
  join?: string;
  font?: string;
}

/**
 * The operators of a page, or of a tile. They are written here and not by jsPDF, which sets
 * all of the pen for every line: a setting that holds already is not written again.
 */
export class Content {
  private settings: Settings = {};
  private readonly kept: Settings[] = [];
  private readonly put: (words: string) => void;
  private readonly scale: number;
  private readonly top: number;
  private readonly down: number;

  private constructor(put: (words: string) => void, scale: number, top: number, down: 1 | -1) {
    this.put = put;
    this.scale = scale;
    this.top = top;
    this.down = down * scale;
  }

  /** A page of a height in mm; millimetres from its top left become points from the bottom left. */
  static ofPage(height: number, put: (words: string) => void): Content {
    return new Content(put, pointsPerMm, height * pointsPerMm, -1);
  }

  /** A tile, whose matrix takes millimetres from the top left as they are. */
  static ofTile(put: (words: string) => void): Content {
    return new Content(put, 1, 0, 1);
  }

  write(words: string): void {
    this.put(words);
  }

  /** x and y of a place given in mm. */
  place(x: number, y: number): string {
    return `${numeral(x * this.scale)} ${numeral(this.top + y * this.down)}`;
  }

  length(mm: number): string {
    return numeral(mm * this.scale);
  }

  /** Writes an operator unless it was the last one of its kind. */
  set(kind: keyof Settings, operator: string): void {
    if (this.settings[kind] === operator) return;
    this.settings[kind] = operator;
    this.put(operator);
  }

  save(): void {
    this.kept.push({ ...this.settings });
    this.put('q');
  }

  restore(): void {
    this.settings = this.kept.pop() ?? {};
    this.put('Q');
  }
}
