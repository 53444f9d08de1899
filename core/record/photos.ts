import { z } from 'zod';
import { fileKinds } from '../base/picture/fileKind.ts';
import { chapter, count, day, flag, oneOf, text } from './fields.ts';

const photo = chapter({
  hash: text('SHA-256 of the file, hexadecimal; the archive keeps the file under it.'),
  file: text('Name of the file.'),
  mediaType: oneOf(fileKinds, 'Kind of the file.').optional(),
  bytes: count('Size of the file, bytes.').optional(),
  width: count('Pixels across, upright.').optional(),
  height: count('Pixels down, upright.').optional(),
  caption: text('What it shows.'),
  takenOn: day('When.'),
  print: flag('Whether papers show it; absent means that they do.'),
});

/** Photos and scans. */
export const photos = z.array(photo).describe('Photos and scans.');

export type Photo = z.infer<typeof photo>;

/** Whether papers show it: not what was left out by hand, and no scan that is a document itself. */
export function isPrinted({ print, mediaType }: Photo): boolean {
  return print !== false && mediaType !== 'application/pdf';
}

/** A photo with its place in the record and the number that papers and folder give it. */
export interface NumberedPhoto {
  readonly photo: Photo;
  /** Place in the record, from 0. */
  readonly at: number;
  /** From 1, over those that are printed; absent for the others. */
  readonly number?: number;
}

/** All photos of a record in its order, those that are printed numbered without a gap. */
export function numberedPhotos(photos: readonly Photo[] | undefined): NumberedPhoto[] {
  let number = 0;
  return (photos ?? []).map((photo, at) =>
    isPrinted(photo) ? { photo, at, number: (number += 1) } : { photo, at },
  );
}
