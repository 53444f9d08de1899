/** A corner of an outline, in font units; one that is `off` bends the line towards itself. */
export interface OutlinePoint {
  readonly x: number;
  readonly y: number;
  readonly on: boolean;
}

export type Contour = readonly OutlinePoint[];

/** A TrueType file, laid open as far as drawing letters needs (OpenType 1.9). */
export interface Face {
  readonly unitsPerEm: number;
  readonly ascender: number;
  readonly descender: number;
  /** Number of a letter's shape; 0 for a letter that the face lacks. */
  glyphOf(codePoint: number): number;
  advanceOf(glyph: number): number;
  /** Where the shape's data stands; empty for a blank. */
  dataOf(glyph: number): DataView;
}

function tablesOf(view: DataView): (tag: string) => DataView {
  const tables = new Map<string, DataView>();
  for (let at = 12; at < 12 + 16 * view.getUint16(4); at += 16) {
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((letter) => view.getUint8(at + letter)));
    const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
    tables.set(tag, new DataView(view.buffer, view.byteOffset + offset, length));
  }
  return (tag) => {
    const table = tables.get(tag);
    if (!table) throw new Error(`A face has no table ${tag}`);
    return table;
  };
}

/** The table of letters in format 4, which every face for Windows has. */
function lettersOf(cmap: DataView): DataView {
  for (let at = 4; at < 4 + 8 * cmap.getUint16(2); at += 8) {
    const offset = cmap.getUint32(at + 4);
    if (cmap.getUint16(offset) === 4)
      return new DataView(cmap.buffer, cmap.byteOffset + offset, cmap.getUint16(offset + 2));
  }
  throw new Error('A face has no letters in format 4');
}

function glyphIn(letters: DataView, codePoint: number): number {
  const twice = letters.getUint16(6);
  for (let at = 0; at < twice; at += 2) {
    if (letters.getUint16(14 + at) < codePoint) continue;
    const start = letters.getUint16(16 + twice + at);
    if (start > codePoint) return 0;
    const delta = letters.getUint16(16 + 2 * twice + at);
    const rangeAt = 16 + 3 * twice + at;
    const range = letters.getUint16(rangeAt);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = letters.getUint16(rangeAt + range + 2 * (codePoint - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}

/** Opens a TrueType file. Throws for a file that is none. */
export function openFace(file: Uint8Array): Face {
  const table = tablesOf(new DataView(file.buffer, file.byteOffset, file.byteLength));
  const [head, hhea, hmtx, loca] = [table('head'), table('hhea'), table('hmtx'), table('loca')];
  const glyf = table('glyf');
  const letters = lettersOf(table('cmap'));
  const advances = hhea.getUint16(34);
  const long = head.getInt16(50) === 1;
  const place = (glyph: number) =>
    long ? loca.getUint32(4 * glyph) : 2 * loca.getUint16(2 * glyph);
  return {
    unitsPerEm: head.getUint16(18),
    ascender: hhea.getInt16(4),
    descender: hhea.getInt16(6),
    glyphOf: (codePoint) => (codePoint > 0xffff ? 0 : glyphIn(letters, codePoint)),
    advanceOf: (glyph) => hmtx.getUint16(4 * Math.min(glyph, advances - 1)),
    dataOf: (glyph) =>
      new DataView(glyf.buffer, glyf.byteOffset + place(glyph), place(glyph + 1) - place(glyph)),
  };
}
