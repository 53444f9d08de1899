import { writtenFormats, type WrittenFormat } from '../exchange/writtenFormats.ts';
import type { WellFilter } from '../record/wellFilter.ts';

export { writtenFormats, type WrittenFormat };

/** Wells that one call writes at most: their files travel whole. More go by the command line. */
export const mostExported = 5000;

/** Something that a format cannot hold, of many wells. */
export interface LossRow {
  /** Kind of the field, `log[].colour`; empty where a well did not go out at all. */
  readonly path: string;
  readonly sentence: string;
  readonly wells: number;
  /** The first of those wells. */
  readonly first: string;
}

export interface ExportCalls {
  /**
   * Writes the wells that fit a filter in a format. Several files come as one ZIP. Refused as
   * `tooManyExported` where more than `mostExported` fit.
   */
  'export.make': {
    takes: { filter: WellFilter; into: WrittenFormat; bom?: boolean };
    gives: {
      fileName: string;
      /** Base64. */
      bytes: string;
      wells: number;
      /** Wells with something typed that did not go out. */
      unrevised: number;
      losses: readonly LossRow[];
    };
  };
}
