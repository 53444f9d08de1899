import { isPrinted, type Photo } from '../../../record/photos.ts';
import { shownPhotos, type PhotoImages, type ShownPhoto } from '../../parts/photos.ts';
import type { BoundPaper } from '../boundPapers.ts';

/** Whether the archive holds a file as it was given. */
export type HeldState = 'held' | 'absent' | 'changed';

/** A file that is listed and not shown. */
export interface ListedFile {
  readonly photo: Photo;
  readonly held: HeldState;
}

/** What stands behind the papers of a well: pictures that none of them shows, and other files. */
export interface Attachments {
  readonly pictures: readonly ShownPhoto[];
  readonly files: readonly ListedFile[];
}

/**
 * The attachments of a well in a binder that holds some papers of it. The as-built drawing shows all
 * pictures but those that were left out by hand, which are listed as files are.
 */
export function attachmentsOf(
  photos: readonly Photo[] | undefined,
  papers: readonly BoundPaper[],
  at: { readonly images: PhotoImages; readonly heldOf: (hash: string) => HeldState },
): Attachments {
  const others = (photos ?? []).filter((photo) => !isPrinted(photo));
  return {
    pictures: papers.includes('asBuilt') ? [] : shownPhotos(photos, at.images),
    files: others.map((photo) => ({
      photo,
      held: photo.hash === undefined ? 'absent' : at.heldOf(photo.hash),
    })),
  };
}
