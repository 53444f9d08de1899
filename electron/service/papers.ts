import { ok, type Result } from '../../core/base/result.ts';
import type { Gives } from '../../core/contract/calls.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import { asBuiltFile, layingOutFile, type PaperFile } from './paperFiles.ts';

/** As the page is given it. */
function sent(made: Result<PaperFile>): Result<Gives<'papers.asBuilt'>> {
  if (!made.ok) return made;
  const { fileName, pdf, findings, unrevised } = made.value;
  return ok({ fileName, pdf: Buffer.from(pdf).toString('base64'), findings, unrevised });
}

/** Calls that make papers. */
export function papersHandlers(parts: ServiceParts): Handlers<'papers'> {
  return {
    'papers.asBuilt': reads((takes) => sent(asBuiltFile(parts, takes))),
    'papers.layingOut': reads((takes) => sent(layingOutFile(parts, takes))),
  };
}
