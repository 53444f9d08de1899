import type { PageFile } from './pageFile.ts';

/** A column's value as SQLite keeps it. */
export type Value = null | number | string | Uint8Array;

const tableBranch = 0x05;
const tableLeaf = 0x0d;
const utf8 = new TextDecoder('utf-8', { fatal: true });

/** A variable-length integer and where it ends; undefined past the end of the bytes. */
function varint(bytes: Buffer, at: number): { value: number; end: number } | undefined {
  let value = 0;
  for (let length = 0; length < 8; length += 1) {
    const byte = bytes[at + length];
    if (byte === undefined) return undefined;
    value = value * 128 + (byte & 0x7f);
    if (byte < 0x80) return { value, end: at + length + 1 };
  }
  const last = bytes[at + 8];
  return last === undefined ? undefined : { value: value * 256 + last, end: at + 9 };
}

/** Bytes of an integer by its serial type. */
const integerLengths = [0, 1, 2, 3, 4, 6, 8];

function lengthOf(type: number): number {
  if (type <= 6) return integerLengths[type]!;
  if (type === 7) return 8;
  return type < 12 ? 0 : Math.floor((type - 12) / 2);
}

/** @throws where a text is not UTF-8. */
function valueOf(type: number, bytes: Buffer): Value {
  if (type === 0) return null;
  if (type === 8) return 0;
  if (type === 9) return 1;
  if (type === 7) return bytes.readDoubleBE(0);
  if (type === 6) return Number(bytes.readBigInt64BE(0));
  if (type <= 5) return bytes.readIntBE(0, bytes.length);
  return type % 2 === 0 ? new Uint8Array(bytes) : utf8.decode(bytes);
}

/** The columns of a row; undefined where its bytes are not a row. */
function columnsOf(payload: Buffer): Value[] | undefined {
  const head = varint(payload, 0);
  if (!head || head.value > payload.length) return undefined;
  const values: Value[] = [];
  let [at, body] = [head.end, head.value];
  while (at < head.value) {
    const type = varint(payload, at);
    if (!type || type.value === 10 || type.value === 11) return undefined;
    const end = body + lengthOf(type.value);
    if (end > payload.length) return undefined;
    try {
      values.push(valueOf(type.value, payload.subarray(body, end)));
    } catch {
      // A text that is no longer UTF-8 was written over.
      return undefined;
    }
    [at, body] = [type.end, end];
  }
  return values;
}

/** How many bytes of a payload lie on the leaf; the rest on a chain of further pages. */
function localBytes(length: number, usable: number): number {
  const most = usable - 35;
  if (length <= most) return length;
  const least = Math.floor(((usable - 12) * 32) / 255) - 23;
  const wanted = least + ((length - least) % (usable - 4));
  return wanted <= most ? wanted : least;
}

/** A cell's whole payload; undefined where a part of it is lost. */
function payloadOf(file: PageFile, leaf: Buffer, at: number): Buffer | undefined {
  const length = varint(leaf, at);
  const rowid = length && varint(leaf, length.end);
  if (!length || !rowid || length.value > file.pages * file.usable) return undefined;
  const local = localBytes(length.value, file.usable);
  const end = rowid.end + local;
  if (end > leaf.length) return undefined;
  const parts = [leaf.subarray(rowid.end, end)];
  let left = length.value - local;
  let next = left === 0 ? 0 : end + 4 <= leaf.length ? leaf.readUInt32BE(end) : 0;
  while (left > 0) {
    const page = next === 0 ? undefined : file.page(next);
    if (!page) return undefined;
    const taken = page.subarray(4, 4 + Math.min(left, file.usable - 4));
    parts.push(taken);
    left -= taken.length;
    next = page.readUInt32BE(0);
  }
  return Buffer.concat(parts);
}

/** Pages that were given back: what they hold was deleted. */
function freePages(file: PageFile): Set<number> {
  const free = new Set<number>();
  const first = file.page(1);
  let trunk = first ? first.readUInt32BE(32) : 0;
  while (trunk !== 0 && trunk <= file.pages && !free.has(trunk)) {
    free.add(trunk);
    const page = file.page(trunk);
    if (!page) break;
    const leaves = Math.min(page.readUInt32BE(4), Math.floor(file.usable / 4) - 2);
    for (let at = 0; at < leaves; at += 1) free.add(page.readUInt32BE(8 + 4 * at));
    trunk = page.readUInt32BE(0);
  }
  return free;
}

/** A row with the table whose tree its page hangs in; none where the way to the page is lost. */
export interface FoundRow {
  readonly values: readonly Value[];
  readonly table?: string;
}

/** Number of bytes before a page's own head: the file's head stands on the first. */
const headOf = (number: number) => (number === 1 ? 100 : 0);

function* cellsOf(file: PageFile, page: Buffer, number: number): Generator<number> {
  const head = headOf(number);
  const first = head + (page[head] === tableLeaf ? 8 : 12);
  const cells = Math.min(page.readUInt16BE(head + 3), Math.floor(file.usable / 2) - head);
  for (let at = 0; at < cells && first + 2 * at + 2 <= page.length; at += 1)
    yield page.readUInt16BE(first + 2 * at);
}

function* rowsOf(file: PageFile, page: Buffer, number: number): Generator<readonly Value[]> {
  for (const cell of cellsOf(file, page, number)) {
    const payload = payloadOf(file, page, cell);
    const row = payload && columnsOf(payload);
    if (row) yield row;
  }
}

/** Leaves that can be reached from a tree's root. */
function* leavesUnder(file: PageFile, root: number): Generator<number> {
  const seen = new Set<number>();
  const left = [root];
  for (let number = left.pop(); number !== undefined; number = left.pop()) {
    if (number === 0 || number > file.pages || seen.has(number)) continue;
    seen.add(number);
    const page = file.page(number);
    const head = headOf(number);
    if (page?.[head] === tableLeaf) yield number;
    if (page?.[head] !== tableBranch) continue;
    left.push(page.readUInt32BE(head + 8));
    for (const cell of cellsOf(file, page, number))
      if (cell + 4 <= page.length) left.push(page.readUInt32BE(cell));
  }
}

/** The table of each leaf, as far as the list of tables and the ways from the roots are left. */
function tablesOfLeaves(file: PageFile): Map<number, string> {
  const tables = new Map<number, string>();
  for (const leaf of leavesUnder(file, 1)) {
    tables.set(leaf, 'sqlite_schema');
    for (const [type, name, , root] of rowsOf(file, file.page(leaf)!, leaf)) {
      if (type !== 'table' || typeof name !== 'string' || typeof root !== 'number') continue;
      for (const page of leavesUnder(file, root)) tables.set(page, name);
    }
  }
  return tables;
}

/** Every row that can still be read, page by page, of whatever table. */
export function* everyRow(file: PageFile): Generator<FoundRow> {
  const free = freePages(file);
  const tables = tablesOfLeaves(file);
  for (let number = 1; number <= file.pages; number += 1) {
    const page = free.has(number) ? undefined : file.page(number);
    if (page?.[headOf(number)] !== tableLeaf) continue;
    const table = tables.get(number);
    for (const values of rowsOf(file, page, number))
      yield table === undefined ? { values } : { values, table };
  }
}
