import { ok, type Result } from '../../core/base/result.ts';
import type { BinderWish } from '../../core/contract/binderShape.ts';
import {
  attachmentsOf,
  type Attachments,
  type HeldState,
} from '../../core/drawing/binder/attachments/attachments.ts';
import { layAttachments } from '../../core/drawing/binder/attachments/layAttachments.ts';
import { binderKit } from '../../core/drawing/binder/binder.ts';
import type { BinderWell } from '../../core/drawing/binder/binderWell.ts';
import type { Page } from '../../core/drawing/items.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Archive } from '../archive/archive.ts';
import type { PaperParts } from '../service/paperFiles.ts';
import { photoImages } from '../service/photoImages.ts';

/** Throws what the disk says. */
function heldOf(archive: Archive, hash: string): HeldState {
  const found = archive.attachment(hash);
  if (found.ok) return 'held';
  if (found.error.code === 'noSuchFile') return 'absent';
  if (found.error.code === 'changedFile') return 'changed';
  throw new Error(found.error.sentence);
}

function attachmentsIn(
  archive: Archive,
  record: WellRecord,
  { papers }: BinderWish,
): Result<Attachments> {
  const kinds = papers.map(({ kind }) => kind);
  const images = kinds.includes('asBuilt') ? ok({}) : photoImages(archive, record);
  if (!images.ok) return images;
  const at = { images: images.value, heldOf: (hash: string) => heldOf(archive, hash) };
  return ok(attachmentsOf(record.photos, kinds, at));
}

/** Pages with the attachments of a well, in the language of the binder; none where nobody asks. */
export function attachmentPages(
  { archive, fonts }: PaperParts,
  record: WellRecord,
  well: BinderWell,
  wish: BinderWish,
): Result<readonly Page[]> {
  if (!wish.attachments) return ok([]);
  const found = attachmentsIn(archive, record, wish);
  if (!found.ok) return found;
  const kit = binderKit(fonts.metrics, wish.language, wish.paper);
  return ok(layAttachments(kit, well, found.value));
}
