import { describe, expect, it } from 'vitest';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { paintSvg } from '../../core/paint/svg/write.ts';
import { openPdf } from '../reading/pdf.ts';
import { complaintsAbout } from '../reading/tools.ts';
import { jpegOf } from '../pictures/jpeg.ts';
import { hashOf, photosOf } from '../pictures/photos.ts';
import { well } from '../demo-data/wells.ts';
import { drawSheet, fonts } from './drawn.ts';

const demo = well('shallow-direct-action-9m.json');

/** A picture with as many different blocks as a photo has, so that nothing shrinks it further. */
function grainy(seed: number): Buffer {
  let state = seed;
  return jpegOf(1600, 1200, () => {
    state = (state * 48271) % 2147483647;
    return [state % 256, state % 256, state % 256];
  });
}

function painted(pictures: readonly Buffer[]) {
  const photos = pictures.map((_, at) => ({ hash: hashOf(at), caption: `Photo ${at}` }));
  const images = Object.fromEntries(
    pictures.map((bytes, at) => [
      hashOf(at),
      { data: `data:image/jpeg;base64,${bytes.toString('base64')}`, width: 1600, height: 1200 },
    ]),
  );
  const { drawing } = drawSheet({ ...demo, photos }, 'A4', 'en', images);
  return { drawing, pdf: Buffer.from(paintPdf(drawing, fonts.files)) };
}

describe('photo pages as a PDF', () => {
  const pictures = [grainy(1), grainy(2), grainy(3)];
  const { drawing, pdf } = painted(pictures);

  it('hold every JPEG byte for byte, once, behind no other filter', () => {
    for (const bytes of pictures) {
      const at = pdf.indexOf(bytes);
      expect(at).toBeGreaterThan(0);
      expect(pdf.indexOf(bytes, at + 1)).toBe(-1);
      const dictionary = pdf.subarray(pdf.lastIndexOf('<<', at), at).toString('latin1');
      expect(dictionary).toMatch(/\/Filter\s*\/DCTDecode/);
      expect(dictionary).not.toContain('FlateDecode');
    }
  });

  it('are larger than the sheet without them by little more than the pictures', () => {
    const bare = painted([]).pdf.length;
    const sum = pictures.reduce((total, { length }) => total + length, 0);
    expect(pdf.length - bare).toBeGreaterThan(sum);
    expect(pdf.length - bare).toBeLessThan(sum + 12_000);
  });

  it('are sound for qpdf and poppler, with photos of every shape', () => {
    expect(complaintsAbout(pdf)).toBe('');
    const { photos, images } = photosOf(7, ['landscape', 'portrait', 'panorama']);
    const sheet = drawSheet({ ...demo, photos }, 'A3', 'fr', images);
    expect(complaintsAbout(paintPdf(sheet.drawing, fonts.files))).toBe('');
  });

  it('are read by another reader with the pictures in their pixels', async () => {
    const file = await openPdf(new Uint8Array(pdf));
    const page = await file.getPage(file.numPages);
    const { fnArray, argsArray } = await page.getOperatorList();
    const sizes = fnArray.flatMap((_, at) => {
      const [name, width, height] = (argsArray[at] ?? []) as unknown[];
      const isPicture = String(name).startsWith('img_') && width !== undefined;
      return isPicture ? [[width, height]] : [];
    });
    expect(sizes).toEqual(pictures.map(() => [1600, 1200]));
    await file.cleanup();
  });

  it('stand in the SVG with what they show in words', () => {
    const svg = paintSvg(drawing, drawing.pages.length - 1);
    for (const [at, bytes] of pictures.entries()) {
      expect(svg).toContain(bytes.toString('base64'));
      expect(svg).toContain(`aria-label="Photo ${at}"`);
    }
  });
});
