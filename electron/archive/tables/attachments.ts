import type { FileKind } from '../../../core/base/picture/fileKind.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A file as it was given. */
export interface Attachment {
  /** SHA-256 of the bytes, hexadecimal. */
  readonly hash: string;
  readonly mediaType: FileKind;
  readonly bytes: Uint8Array;
  /** ISO 8601. */
  readonly addedAt: string;
}

/** What papers show in place of a file. */
export interface PrintCopy {
  readonly mediaType: FileKind;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

interface Row {
  readonly hash: string;
  readonly media_type: FileKind;
  readonly size: number;
  readonly bytes: Uint8Array;
  readonly added_at: string;
}

interface CopyRow {
  readonly hash: string;
  readonly media_type: FileKind;
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

function rowOf({ hash, mediaType, bytes, addedAt }: Attachment): Row {
  return { hash, media_type: mediaType, size: bytes.length, bytes, added_at: addedAt };
}

function attachmentOf({ hash, media_type, bytes, added_at }: Row): Attachment {
  return { hash, mediaType: media_type, bytes, addedAt: added_at };
}

export function findAttachment(db: ReadHandle, hash: string): Attachment | undefined {
  const row = db
    .prepare<[string], Row>(
      'SELECT hash, media_type, size, bytes, added_at FROM attachment WHERE hash = ?',
    )
    .get(hash);
  return row && attachmentOf(row);
}

/** Puts a file in; one with the same bytes stays as it is. */
export function putAttachment(db: WriteHandle, attachment: Attachment): void {
  db.prepare<[Row]>(
    `INSERT INTO attachment (hash, media_type, size, bytes, added_at)
     VALUES (@hash, @media_type, @size, @bytes, @added_at) ON CONFLICT DO NOTHING`,
  ).run(rowOf(attachment));
}

export function findPrintCopy(db: ReadHandle, hash: string): PrintCopy | undefined {
  const row = db
    .prepare<[string], CopyRow>(
      'SELECT hash, media_type, width, height, bytes FROM print_copy WHERE hash = ?',
    )
    .get(hash);
  if (!row) return undefined;
  const { media_type, width, height, bytes } = row;
  return { mediaType: media_type, width, height, bytes };
}

/** Puts a copy beside its file; the first one stays, so that a paper can be made again alike. */
export function putPrintCopy(db: WriteHandle, hash: string, copy: PrintCopy): void {
  const { mediaType, width, height, bytes } = copy;
  db.prepare<[CopyRow]>(
    `INSERT INTO print_copy (hash, media_type, width, height, bytes)
     VALUES (@hash, @media_type, @width, @height, @bytes) ON CONFLICT DO NOTHING`,
  ).run({ hash, media_type: mediaType, width, height, bytes });
}
