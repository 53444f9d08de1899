import { closeSync, existsSync, fstatSync, openSync, readSync } from 'node:fs';

/**
 * The pages of an SQLite file, read without SQLite, so that one bad page does not stand in the way
 * of the others. Layout after "Database File Format", sqlite.org/fileformat2.html.
 */
export interface PageFile {
  /** Bytes of a page that cells may use. */
  readonly usable: number;
  /** Pages are numbered from 1. */
  readonly pages: number;
  /** Undefined where the file ends before it. */
  page(number: number): Buffer | undefined;
  close(): void;
}

/** What the program's own archives have, for a file whose first page is lost. */
const usualPageSize = 4096;
const walHeader = 32;
const frameHeader = 24;

function pageSizeOf(first: Buffer): number {
  const said = first.readUInt16BE(16);
  const size = said === 1 ? 65536 : said;
  const isPower = size >= 512 && (size & (size - 1)) === 0;
  return isPower ? size : usualPageSize;
}

function readAt(file: number, place: number, length: number): Buffer {
  const bytes = Buffer.alloc(length);
  return bytes.subarray(0, readSync(file, bytes, 0, length, place));
}

/**
 * Where the newest copy of each page lies in the file of the write-ahead log: frames of its own
 * salt up to the last one that ends a transaction.
 */
function framesOf(log: number, pageSize: number): Map<number, number> {
  const [committed, open] = [new Map<number, number>(), new Map<number, number>()];
  const head = readAt(log, 0, walHeader);
  if (head.length < walHeader) return committed;
  const salt = head.subarray(16, 24);
  const { size } = fstatSync(log);
  for (let place = walHeader; place + frameHeader + pageSize <= size;) {
    const frame = readAt(log, place, frameHeader);
    if (!frame.subarray(8, 16).equals(salt)) break;
    open.set(frame.readUInt32BE(0), place + frameHeader);
    if (frame.readUInt32BE(4) !== 0) {
      for (const [number, at] of open) committed.set(number, at);
      open.clear();
    }
    place += frameHeader + pageSize;
  }
  return committed;
}

/** Opens an archive's file, with what its write-ahead log holds on top. @throws where it cannot be read. */
export function openPages(file: string): PageFile {
  const main = openSync(file, 'r');
  const logFile = `${file}-wal`;
  const log = existsSync(logFile) ? openSync(logFile, 'r') : undefined;
  const first = readAt(main, 0, 100);
  const pageSize = first.length < 100 ? usualPageSize : pageSizeOf(first);
  const frames = log === undefined ? new Map<number, number>() : framesOf(log, pageSize);
  const pages = Math.max(Math.ceil(fstatSync(main).size / pageSize), ...frames.keys());
  return {
    usable: pageSize,
    pages,
    page(number) {
      const frame = frames.get(number);
      const bytes =
        frame === undefined || log === undefined
          ? readAt(main, (number - 1) * pageSize, pageSize)
          : readAt(log, frame, pageSize);
      return bytes.length === pageSize ? bytes : undefined;
    },
    close() {
      closeSync(main);
      if (log !== undefined) closeSync(log);
    },
  };
}
