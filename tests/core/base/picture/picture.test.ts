import { describe, expect, it } from 'vitest';
import { fileKind, fileKinds } from '../../../../core/base/picture/fileKind.ts';
import { jpegSegments, jpegSize } from '../../../../core/base/picture/jpeg.ts';
import { takenOn } from '../../../../core/base/picture/takenOn.ts';
import { exif, frame, jpegOf, segment } from './sampleJpeg.ts';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('the kind of a file', () => {
  it('is told by its first bytes', () => {
    const kinds = [
      jpegOf(),
      bytes('\x89PNG\r\n\x1a\n....'),
      bytes('RIFF\x10\0\0\0WEBPVP8 '),
      bytes('%PDF-1.7\n'),
    ].map(fileKind);
    expect(kinds).toEqual(fileKinds);
  });

  it('is unknown for others, and for one that is too short to tell', () => {
    const others = ['', '%PD', 'GIF89a', 'RIFF\x10\0\0\0WAVEfmt ', '<svg/>', '\0\0\0\x18ftypmp42'];
    expect(others.map((text) => fileKind(bytes(text)))).toEqual(others.map(() => undefined));
  });

  it('is named for HEIC, so that a sentence can say what to do', () => {
    expect(fileKind(bytes('\0\0\0\x18ftypheic\0\0\0\0mif1'))).toBe('image/heic');
  });
});

describe('the head of a JPEG', () => {
  it('tells the pixels across and down, of a baseline as of a progressive one', () => {
    expect(jpegSize(jpegOf(exif('2026:03:14 09:30:00'), frame(1600, 900)))).toEqual({
      width: 1600,
      height: 900,
    });
    expect(jpegSize(jpegOf(frame(3, 65_000, 0xc2)))).toEqual({ width: 3, height: 65_000 });
  });

  it('does not take a table for a frame', () => {
    const huffman = segment(0xc4, [0, 1, 2, 3, 4, 5, 6]);
    expect(jpegSize(jpegOf(huffman, frame(40, 30)))).toEqual({ width: 40, height: 30 });
  });

  it('tells nothing where it is cut off or has no pixels, wherever the cut is', () => {
    const whole = jpegOf(segment(0xe0, [1, 2, 3]), frame(40, 30));
    const end = whole.length - 11;
    for (let length = 0; length < end; length += 1)
      expect(jpegSize(whole.subarray(0, length))).toBeUndefined();
    expect(jpegSize(jpegOf(frame(0, 30)))).toBeUndefined();
  });

  it('ends where the picture data begin', () => {
    const markers = [...jpegSegments(jpegOf(frame(1, 1), segment(0xdb, [0])))];
    expect(markers.map(({ marker }) => marker)).toEqual([0xc0, 0xdb]);
  });
});

describe('the day of a photo', () => {
  it('is the camera’s own, in either byte order', () => {
    for (const littleEndian of [true, false])
      expect(takenOn(jpegOf(exif('2026:03:14 23:59:59', littleEndian)))).toBe('2026-03-14');
  });

  it('is found behind other segments', () => {
    expect(takenOn(jpegOf(segment(0xe0, [74, 70]), exif('2024:02:29 00:00:00')))).toBe(
      '2024-02-29',
    );
  });

  it('is unknown where the clock was never set or names no day of the calendar', () => {
    for (const moment of [
      '0000:00:00 00:00:00',
      '    :  :     :  :  ',
      '2026:02:29 10:00:00',
      '2026:13:01 10:00:00',
      '2026:04:31 10:00:00',
    ])
      expect(takenOn(jpegOf(exif(moment)))).toBeUndefined();
  });

  it('is unknown without Exif, and no spoilt Exif part throws', () => {
    expect(takenOn(jpegOf(frame(1, 1)))).toBeUndefined();
    const whole = exif('2026:03:14 09:30:00').slice(4);
    for (let length = 0; length < whole.length - 10; length += 1)
      expect(takenOn(jpegOf(segment(0xe1, whole.slice(0, length))))).toBeUndefined();
  });
});
