import { unzipSync, zipSync } from 'fflate';
import { ok, refused, type Result } from '../../base/result.ts';

/** First bytes of every ZIP file, which a workbook is. */
const mark = [0x50, 0x4b, 0x03, 0x04];

/** What a workbook may hold when unpacked; a district's tables take a few million bytes. */
export const limits = { bytes: 300_000_000, parts: 2000 } as const;

export function isZip(bytes: Uint8Array): boolean {
  return mark.every((byte, at) => bytes[at] === byte);
}

const broken = (name: string) =>
  refused(
    'notWorkbook',
    `${name} is not a whole workbook: open it in a spreadsheet program and save it again as XLSX.`,
  );

const tooLarge = (name: string) =>
  refused(
    'workbookTooLarge',
    `${name} would unpack to more than ${limits.bytes / 1_000_000} million bytes, so it was not ` +
      'opened: save the sheet that is wanted as a file of its own.',
  );

/** Parts of a workbook that hold cells, styles and words. */
const isWanted = (name: string) => /\.(xml|rels)$/.test(name);

/** Sizes are those that the file claims of itself; no part is unpacked. */
function claimed(bytes: Uint8Array) {
  let [size, parts] = [0, 0];
  unzipSync(bytes, {
    filter(file) {
      parts++;
      if (isWanted(file.name)) size += file.originalSize;
      return false;
    },
  });
  return { size, parts };
}

/**
 * A workbook with its parts unpacked. A part never grows beyond the size that the file claims,
 * and the claims are added up before anything is unpacked.
 */
export function unpack(name: string, bytes: Uint8Array): Result<Uint8Array> {
  try {
    const { size, parts } = claimed(bytes);
    if (size > limits.bytes || parts > limits.parts) return tooLarge(name);
    const files = unzipSync(bytes, { filter: (file) => isWanted(file.name) });
    if (!Object.hasOwn(files, 'xl/workbook.xml')) return broken(name);
    return ok(zipSync(files, { level: 0 }));
  } catch {
    return broken(name);
  }
}
