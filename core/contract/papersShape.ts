import type { Finding } from '../base/finding.ts';
import type { Language } from '../base/language.ts';
import type { Orientation, PaperName } from '../drawing/paper.ts';
import type { SwitchedColumn } from '../drawing/parts/columnNames.ts';
import type { RevisionNote } from '../drawing/parts/revisionNote.ts';

/** Most wells of one print file. */
export const mostInBatch = 60;

/** Fewest and most dots an inch of a drawing file in pixels: coarse previews to what a printer shows. */
export const dpiBounds = { least: 36, most: 1200 } as const;

/** Which paper is meant, with what its own call takes. */
export type PaperWish =
  | ({ readonly kind: 'asBuilt' } & Omit<PaperCalls['papers.asBuilt']['takes'], 'id'>)
  | ({ readonly kind: 'layingOut' } & Omit<PaperCalls['papers.layingOut']['takes'], 'id'>)
  | ({ readonly kind: 'committee' } & Omit<PaperCalls['papers.committee']['takes'], 'id'>);

/** What a page of a paper can be had as, besides PDF. */
export type DrawingFormat = 'svg' | 'png' | 'dxf';

/** Calls that make papers. */
export interface PaperCalls {
  /** An as-built sheet of the newest revision as PDF, base64. */
  'papers.asBuilt': {
    /**
     * `orientation` as is usual for the size and `columns` as the record brings them where absent;
     * long plain stretches may be left out unless `brokenAxis` is false.
     * `attachRecord` puts the record into the PDF as a file.
     */
    takes: {
      id: string;
      paper: PaperName;
      orientation?: Orientation;
      columns?: readonly SwitchedColumn[];
      brokenAxis?: boolean;
      language?: Language;
      attachRecord?: boolean;
    };
    gives: {
      fileName: string;
      pdf: string;
      findings: readonly Finding[];
      /** Something was typed after the revision that the paper shows. */
      unrevised: boolean;
    };
  };
  /** What an as-built sheet of the newest revision says besides its record. */
  'papers.newest': {
    takes: { id: string; language: Language };
    gives: {
      revision: number;
      /** SHA-256 of that revision's record, hexadecimal. */
      recordHash: string;
      /** What changed in the last revisions, in the language asked for. */
      revisions: readonly RevisionNote[];
    };
  };
  /** The laying-out sheet of the newest revision as PDF, base64. */
  'papers.layingOut': {
    takes: { id: string; language?: Language; attachRecord?: boolean };
    gives: PaperCalls['papers.asBuilt']['gives'];
  };
  /** The as-built sheets of several wells in one PDF, in the order given, base64. */
  'papers.batch': {
    takes: { ids: readonly string[]; paper: 'A4' | 'A3'; language?: Language };
    gives: {
      fileName: string;
      pdf: string;
      /** How many wells have something typed that their sheet does not show. */
      unrevised: number;
    };
  };
  /** The page that tells whether a printer keeps the scale, base64. */
  'papers.checkPage': {
    takes: { paper: 'A4' | 'A3'; language?: Language };
    gives: { fileName: string; pdf: string };
  };
  /**
   * The sheet for the water users committee as PDF, base64: a page a language on A4, two of them side
   * by side on A3.
   */
  'papers.committee': {
    takes: {
      id: string;
      languages: readonly Language[];
      paper?: 'A4' | 'A3';
      attachRecord?: boolean;
    };
    gives: PaperCalls['papers.asBuilt']['gives'];
  };
  /**
   * One page of a paper of the newest revision as a drawing file, base64. Refused as `noSuchPage`
   * where the paper has fewer pages.
   */
  'papers.drawingFile': {
    takes: {
      id: string;
      paper: PaperWish;
      /** From 1. */
      page: number;
      format: DrawingFormat;
      /** Dots an inch of a PNG, 36 to 1200; 300 where absent. */
      dpi?: number;
    };
    gives: { fileName: string; data: string; mediaType: string; unrevised: boolean };
  };
}
