import { refused, type Result } from '../../core/base/result.ts';
import type { PaperWish } from '../../core/contract/papersShape.ts';
import { sayFinding } from '../../core/practice/catalogue.ts';
import { unexplained } from '../../core/record/explained.ts';
import type { IssueLine } from '../archive/issues.ts';
import { recordHash } from '../seal/recordHash.ts';
import type { ServiceParts } from './handlers.ts';
import { filed, wishedSheet, type PaperFile } from './paperFiles.ts';

/** Kind and size as the archive lists it. */
function nameOf(wish: PaperWish): string {
  if (wish.kind === 'asBuilt') return `as-built ${wish.paper}`;
  return wish.kind === 'layingOut' ? 'laying-out' : 'committee';
}

/** Why a paper is not to be issued; undefined where it may be. */
function hindrance({ findings, record, unrevised }: PaperFile): Result<never> | undefined {
  if (unrevised)
    return refused(
      'unrevised',
      'Something was typed that is in no revision yet. Make a revision first, then issue the paper.',
    );
  const open = unexplained(findings, record.explanations);
  const [first] = open;
  if (!first) return undefined;
  return refused(
    'unexplained',
    `${open.length} of the gravest findings are neither mended nor explained, the first: ${sayFinding(first, 'en').sentence} Mend the record, or write beside the finding why it is to stay; then issue the paper.`,
  );
}

/** Freezes a paper of a well's newest revision. */
export function issuePaper(parts: ServiceParts, id: string, wish: PaperWish): Result<IssueLine> {
  const made = wishedSheet(parts, id, wish, true);
  if (!made.ok) return made;
  const file = filed(made.value);
  const refusal = hindrance(file);
  if (refusal) return refusal;
  const { record, revision, fileName, pdf } = file;
  return parts.archive.issues.add({
    wellId: id,
    revision,
    paper: nameOf(wish),
    languages: wish.kind === 'committee' ? wish.languages.join(',') : (wish.language ?? 'en'),
    fileName,
    recordHash: recordHash(record),
    freeMarks: file.freeMarks,
    pdf,
  });
}
