import type { Fonts } from '../../base/text/metrics.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { Drawing } from '../items.ts';

export interface AsBuiltOptions {
  readonly paper: 'A4' | 'A3';
  readonly fonts: Fonts;
  /** ISO 8601 moment at which the paper is made. */
  readonly madeAt: string;
  /** 32 hexadecimal digits. */
  readonly paperId: string;
  /** Revision of the record in the archive, from 1; absent for a loose file. */
  readonly revision?: number;
}

/** The as-built sheet of a well, true to scale. */
export function drawAsBuilt(
  record: WellRecord,
  _model: WellModel,
  options: AsBuiltOptions,
): Drawing {
  return {
    title: record.identity?.number ?? '',
    subject: 'As-built completion diagram',
    author: record.identity?.supervisor ?? '',
    language: 'en',
    madeAt: options.madeAt,
    paperId: options.paperId,
    pages: [{ width: 210, height: 297, items: [] }],
    hatches: {},
  };
}
