import type { Language } from '../../core/base/language.ts';
import { refused, type Result } from '../../core/base/result.ts';
import type { Gives } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import type { Folder } from './folder.svelte.ts';
import type { SheetShape } from './preferences.svelte.ts';

export type PaperSize = PaperName;

/** The as-built sheet on one of its sizes, or a sheet that has but one. */
export type PaperChoice = PaperSize | 'layingOut' | 'committee';

export interface WantedPaper {
  readonly paper: PaperChoice;
  readonly language: Language;
  /** Beside the first, of the sheet for the committee. */
  readonly second?: Language | undefined;
  /** Of the as-built sheet. */
  readonly shape: SheetShape;
}

/** Why no paper is made while two windows' work waits for a choice; the page has the sentence. */
export const partedCode = 'parted';

/**
 * The chosen sheet as PDF, of what lies open: a revision is made of it first, since papers show
 * revisions. Refused when that is.
 */
export async function exportPaper(
  host: PageHost,
  folder: Folder,
  { paper, language, second, shape }: WantedPaper,
): Promise<Result<Gives<'papers.asBuilt'>>> {
  if (!folder.readOnly) {
    await folder.saving.revise();
    const { state } = folder.saving;
    if (state.kind === 'refused') return refused(state.code, state.sentence);
    if (state.kind === 'parted') return refused(partedCode, '');
  }
  const { id } = folder;
  if (paper === 'layingOut') return host.send('papers.layingOut', { id, language });
  if (paper === 'committee') {
    const languages = second === undefined ? [language] : [language, second];
    return host.send('papers.committee', { id, languages });
  }
  return host.send('papers.asBuilt', { id, paper, language, ...shape });
}
