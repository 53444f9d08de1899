import { describe, expect, it } from 'vitest';
import { photoImages, printedHashes } from '../../../electron/service/photoImages.ts';
import { makeAsBuilt } from '../../../electron/service/sheet.ts';
import { readFonts } from '../../../electron/files/fonts.ts';
import { jpegOf } from '../../pictures/jpeg.ts';
import { hashOf } from '../../pictures/photos.ts';
import { openFresh, valueOf } from '../archive/sample.ts';

const bytes = jpegOf(16, 8, (x) => [x * 9, 7, 7]);
const copy = { mediaType: 'image/jpeg', width: 16, height: 8, bytes } as const;

describe('the pictures of a record', () => {
  it('come from the archive as data URLs with their size; those that it lacks are left out', () => {
    const archive = openFresh();
    const hash = valueOf(archive.attach({ mediaType: 'image/jpeg', bytes, copy }));
    const photos = [{ hash }, { hash: hashOf(2) }, {}];
    const data = `data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}`;
    expect(valueOf(photoImages(archive, { schemaVersion: 1, photos }))).toEqual({
      [hash]: { data, width: 16, height: 8 },
    });
  });

  it('are only those that papers show', () => {
    const photos = [
      { hash: 'a' },
      { hash: 'b', print: false },
      { hash: 'c', mediaType: 'application/pdf' as const },
    ];
    expect(printedHashes({ schemaVersion: 1, photos })).toEqual(['a']);
    expect(printedHashes({ schemaVersion: 1 })).toEqual([]);
  });

  it('are refused with what the disk says, and not taken for missing', () => {
    const printCopy = () => ({ ok: false, error: { code: 'damaged', sentence: 'So.' } }) as const;
    const record = { schemaVersion: 1 as const, photos: [{ hash: 'a' }] };
    expect(photoImages({ printCopy }, record)).toMatchObject({ error: { code: 'damaged' } });
  });
});

describe('a paper’s id', () => {
  it('is another one when another set of pictures was at hand', () => {
    const record = { schemaVersion: 1 as const, photos: [{ hash: 'a' }] };
    const made = { paper: 'A4', fonts: readFonts(), madeAt: '2026-03-01T10:00:00Z' } as const;
    const image = { data: 'data:image/jpeg;base64,', width: 4, height: 3 };
    const idOf = (images: object) =>
      makeAsBuilt(record, { ...made, images: images as never }).drawing.paperId;
    expect(idOf({ a: image })).not.toBe(idOf({}));
    expect(idOf({ b: image })).toBe(idOf({}));
  });
});
