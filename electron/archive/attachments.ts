import { hash } from 'node:crypto';
import type { FileKind } from '../../core/base/picture/fileKind.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { ReadHandle, WriteHandle } from './handles.ts';
import {
  findAttachment,
  findPrintCopy,
  putAttachment,
  putPrintCopy,
  type Attachment,
  type PrintCopy,
} from './tables/attachments.ts';

export type { Attachment, PrintCopy };

/** A file to be kept, and what papers are to show of it. */
export interface GivenFile {
  readonly mediaType: FileKind;
  readonly bytes: Uint8Array;
  readonly copy?: PrintCopy;
}

function sha256(bytes: Uint8Array): string {
  return hash('sha256', bytes);
}

/** Keeps a file and its copy together, and gives the hash that records name it by. */
export function attach(db: WriteHandle, given: GivenFile, addedAt: string): Result<string> {
  const { mediaType, bytes, copy } = given;
  const name = sha256(bytes);
  db.transaction(() => {
    putAttachment(db, { hash: name, mediaType, bytes, addedAt });
    if (copy) putPrintCopy(db, name, copy);
  }).immediate();
  return ok(name);
}

const missing = () =>
  refused(
    'noSuchFile',
    'The archive does not hold this file. Add it again, or look for it in the archive that the record came from.',
  );

/** A file as it was given. Refused as `changedFile` when its bytes no longer fit its hash. */
export function openAttachment(db: ReadHandle, name: string): Result<Attachment> {
  const found = findAttachment(db, name);
  if (!found) return missing();
  if (sha256(found.bytes) === name) return ok(found);
  return refused(
    'changedFile',
    'This file is not what was kept: it was changed outside the program. Take it from a backup.',
  );
}

/** What papers show of a file; refused for a file that they do not show. */
export function openPrintCopy(db: ReadHandle, name: string): Result<PrintCopy> {
  const found = findPrintCopy(db, name);
  return found ? ok(found) : missing();
}
