import type { FileKind } from '../base/picture/fileKind.ts';

/** Largest file that an archive takes, bytes: some eight times what a telephone's camera makes. */
export const largestFile = 40 * 2 ** 20;

/** Most letters that the largest file takes as base64. */
export const largestFileText = 4 * Math.ceil(largestFile / 3);

/** A picture as papers and the folder show it. */
export interface PrintPicture {
  /** JPEG or PNG, base64. */
  readonly data: string;
  readonly mediaType: FileKind;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** Calls about files that records name by their SHA-256. Files travel as base64. */
export interface AttachmentCalls {
  /**
   * Keeps a file as it is, and a JPEG to print in its place. The same bytes are kept once. What
   * the file is, is told by its first bytes. Refusals: `unknownKind`, `tooLarge`, `badCopy`.
   */
  'attachments.put': {
    takes: { data: string; copy?: string };
    gives: { hash: string; mediaType: FileKind; bytes: number };
  };
  /** A file as it was given. */
  'attachments.get': {
    takes: { hash: string };
    gives: { data: string; mediaType: FileKind };
  };
  /** The copy for print. */
  'attachments.printCopy': { takes: { hash: string }; gives: PrintPicture };
}
