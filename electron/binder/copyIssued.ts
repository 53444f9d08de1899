import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Archive } from '../archive/archive.ts';
import { replaceFile } from '../files/replaceFile.ts';
import { uniqueNames } from '../files/uniqueNames.ts';
import { sha256Hex } from '../seal/hash.ts';
import { issuesOf, pdfOf, type IssueOfWell } from './issuedPapers.ts';
import type { WellToLay } from './messages.ts';
import { fileNameOf } from './volumeFileName.ts';

/** Number, kind and revision, as the paper was named; another program may have written the name. */
const nameOf = ({ line }: IssueOfWell) => `${fileNameOf(path.parse(line.fileName).name)}.pdf`;

/** Tells the hashes of the copies, as `sha256sum -c` reads them. */
const sumsFile = 'SHA256SUMS';

/**
 * Copies what was issued of some wells into a folder, byte for byte; gives how many papers. No
 * folder is made where there is none. Throws what the disk says.
 */
export async function copyIssued(
  archive: Archive,
  wells: readonly WellToLay[],
  folder: string,
): Promise<number> {
  const issues = issuesOf(archive, wells);
  if (issues.length === 0) return 0;
  mkdirSync(folder, { recursive: true });
  const names = uniqueNames(issues.map(nameOf));
  const sums: string[] = [];
  for (const [at, issue] of issues.entries()) {
    const pdf = pdfOf(archive, issue);
    await replaceFile(path.join(folder, names[at]!), pdf);
    sums.push(`${sha256Hex(pdf)}  ${names[at]!}\n`);
  }
  await replaceFile(path.join(folder, sumsFile), sums.join(''));
  return issues.length;
}
