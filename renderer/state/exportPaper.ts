import type { Language } from '../../core/base/language.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Gives } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { DrawingFormat, PaperWish } from '../../core/contract/papersShape.ts';
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
  /** Puts the record into the PDF as a file. */
  readonly attachRecord?: boolean;
  /** Both languages of the committee's sheet on one A3. */
  readonly sideBySide?: boolean;
}

/** Why no paper is made while two windows' work waits for a choice; the page has the sentence. */
export const partedCode = 'parted';

/** A revision of what lies open, since papers show revisions; refused when that is. */
async function revised(folder: Folder): Promise<Result<null>> {
  if (folder.readOnly) return ok(null);
  await folder.saving.revise();
  const { state } = folder.saving;
  if (state.kind === 'refused') return refused(state.code, state.sentence);
  return state.kind === 'parted' ? refused(partedCode, '') : ok(null);
}

function wishOf(wanted: WantedPaper): PaperWish {
  const { paper, language, second, shape, sideBySide } = wanted;
  const attached = wanted.attachRecord ? { attachRecord: true } : {};
  if (paper === 'layingOut') return { kind: 'layingOut', language, ...attached };
  if (paper !== 'committee') return { kind: 'asBuilt', paper, language, ...shape, ...attached };
  const languages = second === undefined ? [language] : [language, second];
  return { kind: 'committee', languages, ...(sideBySide && { paper: 'A3' }), ...attached };
}

/** Each kind of paper has its own call, which takes what the wish says besides its kind. */
function ask(
  host: PageHost,
  id: string,
  wish: PaperWish,
): Promise<Result<Gives<'papers.asBuilt'>>> {
  switch (wish.kind) {
    case 'asBuilt': {
      const { kind, ...takes } = wish;
      return host.send(`papers.${kind}`, { id, ...takes });
    }
    case 'layingOut': {
      const { kind, ...takes } = wish;
      return host.send(`papers.${kind}`, { id, ...takes });
    }
    case 'committee': {
      const { kind, ...takes } = wish;
      return host.send(`papers.${kind}`, { id, ...takes });
    }
  }
}

/** The chosen sheet as PDF, of what lies open: a revision is made of it first. */
export async function exportPaper(
  host: PageHost,
  folder: Folder,
  wanted: WantedPaper,
): Promise<Result<Gives<'papers.asBuilt'>>> {
  const fresh = await revised(folder);
  if (!fresh.ok) return fresh;
  return ask(host, folder.id, wishOf(wanted));
}

/** A page, from 1, of the chosen sheet as a drawing file, of what lies open. */
export async function exportDrawing(
  host: PageHost,
  folder: Folder,
  wanted: WantedPaper,
  file: { readonly page: number; readonly format: DrawingFormat },
): Promise<Result<Gives<'papers.drawingFile'>>> {
  const fresh = await revised(folder);
  if (!fresh.ok) return fresh;
  return host.send('papers.drawingFile', { id: folder.id, paper: wishOf(wanted), ...file });
}
