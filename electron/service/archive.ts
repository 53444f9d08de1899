import { ok } from '../../core/base/result.ts';
import { checkPapers } from './checkPapers.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';

/** Calls about the archive as a whole. */
export function archiveHandlers({ archive }: ServiceParts): Handlers<'archive'> {
  const { name, readOnly } = archive;
  return {
    'archive.state': reads(() => {
      const wells = archive.count();
      if (!wells.ok) return wells;
      const sentence = readOnly === undefined ? {} : { sentence: readOnly };
      return ok({ name, wells: wells.value, readOnly: readOnly !== undefined, ...sentence });
    }),
    'archive.check': reads(() => {
      const chains = archive.check();
      if (!chains.ok) return chains;
      const papers = checkPapers(archive);
      return papers.ok ? ok({ ...chains.value, ...papers.value }) : papers;
    }),
  };
}
