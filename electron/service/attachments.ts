import { fileKind, fileKinds, type FileKind } from '../../core/base/picture/fileKind.ts';
import { jpegSize } from '../../core/base/picture/jpeg.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { largestFile, largestFileText } from '../../core/contract/attachmentsShape.ts';
import type { PrintCopy } from '../archive/attachments.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';

const tooLarge = () =>
  refused(
    'tooLarge',
    `A file may have at most ${largestFile / 2 ** 20} MB. Save it smaller, then add it again.`,
  );

const unknownKind = () =>
  refused(
    'unknownKind',
    'This file is neither a JPEG, PNG or WebP picture nor a PDF. Save it as one of these, then add it again.',
  );

const badCopy = () =>
  refused('badCopy', 'The copy for print is no JPEG picture. Add the file once more.');

/** Base64 as bytes; what is more than the largest file is not even decoded. */
function decoded(data: string): Result<Buffer> {
  if (data.length > largestFileText) return tooLarge();
  const bytes = Buffer.from(data, 'base64');
  return bytes.length > largestFile ? tooLarge() : ok(bytes);
}

function kindOf(bytes: Uint8Array): Result<FileKind> {
  const kind = fileKinds.find((one) => one === fileKind(bytes));
  return kind ? ok(kind) : unknownKind();
}

/** The copy's size is read from its own bytes, since papers are laid by it. */
function readCopy(data: string): Result<PrintCopy> {
  const bytes = decoded(data);
  if (!bytes.ok) return bytes;
  const size = jpegSize(bytes.value);
  if (fileKind(bytes.value) !== 'image/jpeg' || !size) return badCopy();
  return ok({ mediaType: 'image/jpeg', ...size, bytes: bytes.value });
}

const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

/** Calls about photos and scans. */
export function attachmentsHandlers({ archive }: ServiceParts): Handlers<'attachments'> {
  return {
    'attachments.put': writes(({ data, copy }) => {
      const bytes = decoded(data);
      if (!bytes.ok) return bytes;
      const kind = kindOf(bytes.value);
      if (!kind.ok) return kind;
      const printed = copy === undefined ? undefined : readCopy(copy);
      if (printed && !printed.ok) return printed;
      const file = { mediaType: kind.value, bytes: bytes.value };
      const hash = archive.attach(printed ? { ...file, copy: printed.value } : file);
      if (!hash.ok) return hash;
      return ok({ hash: hash.value, mediaType: kind.value, bytes: bytes.value.length });
    }),
    'attachments.get': reads(({ hash }) => {
      const found = archive.attachment(hash);
      if (!found.ok) return found;
      const { bytes, mediaType } = found.value;
      return ok({ data: base64(bytes), mediaType });
    }),
    'attachments.printCopy': reads(({ hash }) => {
      const found = archive.printCopy(hash);
      if (!found.ok) return found;
      const { bytes, ...picture } = found.value;
      return ok({ ...picture, data: base64(bytes) });
    }),
  };
}
