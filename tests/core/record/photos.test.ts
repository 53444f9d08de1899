import { describe, expect, it } from 'vitest';
import { isPrinted, numberedPhotos } from '../../../core/record/photos.ts';
import { readRecord } from '../../../core/record/read.ts';

describe('photos of a record', () => {
  it('are printed unless they were left out or are documents of their own', () => {
    expect(isPrinted({})).toBe(true);
    expect(isPrinted({ print: true, mediaType: 'image/png' })).toBe(true);
    expect(isPrinted({ print: false })).toBe(false);
    expect(isPrinted({ mediaType: 'application/pdf' })).toBe(false);
    expect(isPrinted({ print: true, mediaType: 'application/pdf' })).toBe(false);
  });

  it('are numbered in their order without a gap, over those that are printed', () => {
    const photos = [{ file: 'a' }, { file: 'b', print: false }, { file: 'c' }];
    expect(numberedPhotos(photos)).toEqual([
      { photo: photos[0], at: 0, number: 1 },
      { photo: photos[1], at: 1 },
      { photo: photos[2], at: 2, number: 2 },
    ]);
    expect(numberedPhotos(undefined)).toEqual([]);
  });

  it('keep what was written before they had a kind and a size', () => {
    const photos = [{ hash: 'ab', file: 'pump.jpg', caption: 'The pump', takenOn: '2026-03-14' }];
    const read = readRecord({ schemaVersion: 1, photos });
    expect(read).toMatchObject({ kind: 'ok', troubles: [], record: { photos } });
  });

  it('lose a kind that no archive keeps, and nothing else', () => {
    const photos = [{ file: 'pump.gif', mediaType: 'image/gif', width: 3.5 }];
    const read = readRecord({ schemaVersion: 1, photos });
    if (read.kind !== 'ok') throw new Error('not read');
    expect(read.record.photos).toEqual([{ file: 'pump.gif' }]);
    expect(read.troubles.map(({ path }) => path)).toEqual([
      'photos[0].mediaType',
      'photos[0].width',
    ]);
  });
});
