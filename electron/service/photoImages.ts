import { ok, type Result } from '../../core/base/result.ts';
import type { PhotoImage, PhotoImages } from '../../core/drawing/parts/photos.ts';
import { isPrinted } from '../../core/record/photos.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Archive } from '../archive/archive.ts';
import type { PrintCopy } from '../archive/attachments.ts';

/** Hashes of the photos that papers show, and of pictures of marks. */
export function printedHashes({ photos = [], marks = [] }: WellRecord): string[] {
  const shown = [...photos.filter(isPrinted), ...marks];
  return shown.flatMap(({ hash }) => (hash === undefined ? [] : [hash]));
}

function imageOf({ mediaType, width, height, bytes }: PrintCopy): PhotoImage {
  const data = Buffer.from(bytes).toString('base64');
  return { data: `data:${mediaType};base64,${data}`, width, height };
}

/**
 * The pictures of a record that an archive holds, as papers need them. One that it does not hold
 * is left out: its frame says so. What the disk refuses is a refusal.
 */
export function photoImages(
  archive: Pick<Archive, 'printCopy'>,
  record: WellRecord,
): Result<PhotoImages> {
  const images: Record<string, PhotoImage> = {};
  for (const hash of printedHashes(record)) {
    const copy = archive.printCopy(hash);
    if (copy.ok) images[hash] = imageOf(copy.value);
    else if (copy.error.code !== 'noSuchFile') return copy;
  }
  return ok(images);
}
