import type { Finding } from '../base/finding.ts';
import type { Language } from '../base/language.ts';

/** Calls that make papers. */
export interface PaperCalls {
  /** An as-built sheet of the newest revision as PDF, base64. */
  'papers.asBuilt': {
    takes: { id: string; paper: 'A4' | 'A3'; language?: Language };
    gives: {
      fileName: string;
      pdf: string;
      findings: readonly Finding[];
      /** Something was typed after the revision that the paper shows. */
      unrevised: boolean;
    };
  };
  /** The laying-out sheet of the newest revision as PDF, base64. */
  'papers.layingOut': {
    takes: { id: string; language?: Language };
    gives: PaperCalls['papers.asBuilt']['gives'];
  };
}
