import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { pdfObjects, type PdfDictionary } from '../../../reading/pdfObjects.ts';
import { drawing, fonts, page, picture } from '../sample.ts';

/** One part of a PNG file (ISO/IEC 15948, 5.3). */
function chunk(kind: string, data: readonly number[] | Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), Buffer.from(data)]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

interface Made {
  readonly width: number;
  /** Bits a value, and ISO/IEC 15948's kind: 3 palette, 4 grey with clearness. */
  readonly bits: number;
  readonly kind: number;
  /** Rows, each after the number of its filter. */
  readonly rows: readonly (readonly number[])[];
  readonly parts?: readonly Buffer[];
}

function png({ width, bits, kind, rows, parts = [] }: Made): string {
  const head = chunk('IHDR', [0, 0, 0, width, 0, 0, 0, rows.length, bits, kind, 0, 0, 0]);
  const data = chunk('IDAT', deflateSync(Buffer.from(rows.flatMap((row) => [0, ...row]))));
  const mark = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  const file = Buffer.concat([mark, head, ...parts, data, chunk('IEND', [])]);
  return `data:image/png;base64,${file.toString('base64')}`;
}

/** The one picture of a PDF that shows it. */
function held(data: string): { kind: PdfDictionary; dots: number[] } {
  const image = { kind: 'image', x: 0, y: 0, width: 9, height: 9, data, says: '' } as const;
  const { all } = pdfObjects(paintPdf(drawing([page([image])]), fonts.files));
  const [only, ...others] = all.filter(
    ({ value }) => (value as PdfDictionary | null)?.['/Subtype'] === '/Image',
  );
  expect(others).toEqual([]);
  return { kind: only!.value as PdfDictionary, dots: [...only!.stream!] };
}

describe('a picture that lets the paper through', () => {
  it('is held as it looks on white paper', () => {
    const { kind, dots } = held(picture);
    expect(kind).toMatchObject({ '/ColorSpace': '/DeviceRGB', '/Width': 2, '/Height': 2 });
    expect(kind).not.toHaveProperty('/SMask');
    expect(dots).toHaveLength(12);
  });

  it('may be grey: 0 half clear and 200 wholly clear become 127 and white', () => {
    const { kind, dots } = held(
      png({ width: 3, bits: 8, kind: 4, rows: [[0, 128, 200, 0, 9, 255]] }),
    );
    expect(kind).toMatchObject({ '/ColorSpace': '/DeviceGray', '/BitsPerComponent': 8 });
    expect(dots).toEqual([127, 255, 9]);
  });

  it('may have a palette, whose rows begin on a byte', () => {
    const palette = chunk('PLTE', [255, 0, 0, 0, 0, 255, 0, 0, 0, 10, 20, 30]);
    const clear = chunk('tRNS', [255, 0, 128, 255]);
    // Four places of two bits in a byte: 0 1 2 3.
    const made = { width: 4, bits: 2, kind: 3, rows: [[0b00011011]], parts: [palette, clear] };
    const { kind, dots } = held(png(made));
    expect(kind).toMatchObject({ '/ColorSpace': '/DeviceRGB', '/BitsPerComponent': 8 });
    expect(dots).toEqual([255, 0, 0, 255, 255, 255, 127, 127, 127, 10, 20, 30]);
  });
});

describe('a picture that lets nothing through', () => {
  it('is held dot by dot as it is', () => {
    const palette = chunk('PLTE', [255, 0, 0, 0, 0, 255]);
    const { dots, kind } = held(
      png({ width: 8, bits: 1, kind: 3, rows: [[0b10101010]], parts: [palette] }),
    );
    expect(dots).toEqual([0b10101010]);
    expect(kind).toMatchObject({ '/BitsPerComponent': 1, '/Width': 8 });
  });
});
