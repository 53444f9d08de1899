import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { crc32 } from 'node:zlib';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { faceIds, type FaceId } from '../../core/base/text/metrics.ts';
import { familyOf } from '../../core/paint/svg/family.ts';
import type { ShippedFonts } from '../files/fonts.ts';

/** Beside the bundled program, else where the package lies. */
function moduleFile(): string {
  const beside = path.join(import.meta.dirname, 'index_bg.wasm');
  if (existsSync(beside)) return beside;
  return fileURLToPath(import.meta.resolve('@resvg/resvg-wasm/index_bg.wasm'));
}

let ready: Promise<void> | undefined;

/** The painter's names of the faces, as the font files call themselves. */
const faces: Readonly<Record<FaceId, string>> = {
  regular: 'font-family="Source Sans 3"',
  bold: 'font-family="Source Sans 3" font-weight="600"',
  fallback: 'font-family="Noto Sans"',
};

function withFaces(svg: string): string {
  return faceIds.reduce(
    (text, face) => text.replaceAll(`font-family="${familyOf(face)}"`, faces[face]),
    svg,
  );
}

/** The renderer's module, read once. */
function renderer(): Promise<void> {
  ready ??= initWasm(readFileSync(moduleFile()));
  return ready;
}

/** A chunk of a PNG file with its check sum (ISO/IEC 15948). */
function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}

/** Signature and header of a PNG, after which the size of its pixels is said. */
const headBytes = 8 + 25;

/** Says how large a pixel is, so that the picture is placed at its true size. */
function sized(png: Uint8Array, dpi: number): Uint8Array {
  const perMetre = Math.round(dpi / 0.0254);
  const data = Buffer.alloc(9);
  data.writeUInt32BE(perMetre, 0);
  data.writeUInt32BE(perMetre, 4);
  data.writeUInt8(1, 8);
  const [head, rest] = [png.subarray(0, headBytes), png.subarray(headBytes)];
  return new Uint8Array(Buffer.concat([head, chunk('pHYs', data), rest]));
}

/** A page of `widthMm`, as SVG, in pixels: PNG on white, which says its own resolution. */
export async function paintPng(
  svg: string,
  widthMm: number,
  dpi: number,
  fonts: ShippedFonts['files'],
): Promise<Uint8Array> {
  await renderer();
  const drawn = new Resvg(withFaces(svg), {
    background: '#ffffff',
    fitTo: { mode: 'width', value: Math.round((widthMm / 25.4) * dpi) },
    font: { fontBuffers: Object.values(fonts), defaultFontFamily: 'Source Sans 3' },
  });
  try {
    return sized(drawn.render().asPng(), dpi);
  } finally {
    drawn.free();
  }
}
