import { jpegSegments } from './jpeg.ts';

/** Tags of TIFF fields in a photo's Exif part (CIPA DC-008, from memory). */
const exifPart = 0x8769;
const takenAt = 0x9003;

/** A TIFF part: eight bytes of head, then lists of fields of twelve bytes. */
class Tiff {
  readonly #view: DataView;
  readonly #littleEndian: boolean;

  constructor(bytes: Uint8Array) {
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#littleEndian = this.#view.getUint16(0) === 0x4949;
  }

  long(at: number): number {
    return this.#view.getUint32(at, this.#littleEndian);
  }

  /** Where the field with a tag keeps its value or the place of it. */
  valueOf(tag: number, list: number): number | undefined {
    const count = this.#view.getUint16(list, this.#littleEndian);
    for (let field = list + 2; field < list + 2 + 12 * count; field += 12)
      if (this.#view.getUint16(field, this.#littleEndian) === tag) return field + 8;
    return undefined;
  }

  text(at: number, length: number): string {
    const bytes = Array.from({ length }, (_, index) => this.#view.getUint8(at + index));
    return String.fromCharCode(...bytes);
  }
}

function momentIn(tiff: Tiff): string | undefined {
  const part = tiff.valueOf(exifPart, tiff.long(4));
  const moment = part && tiff.valueOf(takenAt, tiff.long(part));
  return moment ? tiff.text(tiff.long(moment), 10) : undefined;
}

/** Days of a month of the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}

/** `YYYY-MM-DD`; undefined for a camera whose clock was never set. */
function dayOf(written: string): string | undefined {
  const [, year = '', month = '', day = ''] = /^(\d{4}):(\d\d):(\d\d)$/.exec(written) ?? [];
  const isDay = Number(day) >= 1 && Number(day) <= daysIn(Number(year), Number(month));
  return isDay && Number(year) > 0 ? `${year}-${month}-${day}` : undefined;
}

/**
 * The day on which a JPEG says that it was taken, by the camera's own clock; undefined where it
 * says nothing or its Exif part is spoilt.
 */
export function takenOn(bytes: Uint8Array): string | undefined {
  for (const { marker, content } of jpegSegments(bytes)) {
    const isExif = marker === 0xe1 && String.fromCharCode(...content.subarray(0, 4)) === 'Exif';
    if (!isExif) continue;
    try {
      const written = momentIn(new Tiff(content.subarray(6)));
      return written === undefined ? undefined : dayOf(written);
    } catch (error) {
      // A place that lies outside the part: the photo is as good without its day.
      if (error instanceof RangeError) return undefined;
      throw error;
    }
  }
  return undefined;
}
