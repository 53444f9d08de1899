import { refused, type Result } from '../../core/base/result.ts';
import type { Gives } from '../../core/contract/calls.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { Folder } from './folder.svelte.ts';

export type PaperSize = 'A4' | 'A3';

/**
 * The as-built sheet as PDF, of what lies open: it is saved first, since the service makes
 * papers from the archive. Refused when that save is.
 */
export async function exportAsBuilt(
  host: PageHost,
  folder: Folder,
  paper: PaperSize,
): Promise<Result<Gives<'papers.asBuilt'>>> {
  await folder.saving.flush();
  const { state } = folder.saving;
  if (state.kind === 'refused') return refused(state.code, state.sentence);
  return host.send('papers.asBuilt', { id: folder.id, paper });
}
