import { ok, type Result } from '../../core/base/result.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import { misused, textOption, type Given } from './command.ts';

/** The size that a sheet shall have: A4 where none is asked for. */
export function readPaper(given: Given): Result<PaperName> {
  const paper = (textOption(given, 'paper') ?? 'A4').toUpperCase();
  if (paper === 'A4' || paper === 'A3') return ok(paper);
  return misused(`There is no paper ${paper} here: --paper A4 or --paper A3.`);
}
