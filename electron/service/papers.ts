import { ok, type Result } from '../../core/base/result.ts';
import type { Gives } from '../../core/contract/calls.ts';
import { recordHash } from '../seal/recordHash.ts';
import { revisionNotes } from './revisionNotes.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import { batchFile } from './batchFile.ts';
import { makeCheckPage } from './checkPage.ts';
import { drawingFile } from './drawingFile.ts';
import {
  asBuiltSheet,
  committeeSheet,
  filed,
  layingOutSheet,
  newestOf,
  type NewestSheet,
} from './paperFiles.ts';
import { checkPageFileName } from './paperNames.ts';

const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

/** As the page is given it. */
function sent(made: Result<NewestSheet>): Result<Gives<'papers.asBuilt'>> {
  if (!made.ok) return made;
  const { fileName, pdf, findings, unrevised } = filed(made.value);
  return ok({ fileName, pdf: base64(pdf), findings, unrevised });
}

/** Calls that make papers. */
export function papersHandlers(parts: ServiceParts): Handlers<'papers'> {
  return {
    'papers.asBuilt': reads((takes) => sent(asBuiltSheet(parts, takes))),
    'papers.newest': reads(({ id, language }) => {
      const newest = newestOf(parts, id);
      if (!newest.ok) return newest;
      const { record, revision } = newest.value;
      const told = revisionNotes(parts.archive, id, revision, language);
      if (!told.ok) return told;
      return ok({ revision, recordHash: recordHash(record), revisions: told.value });
    }),
    'papers.layingOut': reads((takes) => sent(layingOutSheet(parts, takes))),
    'papers.batch': reads((takes) => {
      const made = batchFile(parts, takes);
      return made.ok ? ok({ ...made.value, pdf: base64(made.value.pdf) }) : made;
    }),
    'papers.checkPage': reads(({ paper, language }) => {
      const sheet = makeCheckPage({
        ...parts,
        madeAt: parts.clock(),
        paper,
        ...(language && { language }),
      });
      return ok({ fileName: checkPageFileName(paper, language), pdf: base64(sheet.pdf()) });
    }),
    'papers.committee': reads((takes) => sent(committeeSheet(parts, takes))),
    'papers.drawingFile': reads(async (takes) => {
      const made = await drawingFile(parts, takes);
      return made.ok ? ok({ ...made.value, data: base64(made.value.data) }) : made;
    }),
  };
}
