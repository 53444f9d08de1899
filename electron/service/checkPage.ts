import type { Language } from '../../core/base/language.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import { drawCheckPage } from '../../core/drawing/papers/checkPage.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { sha256Hex } from '../seal/hash.ts';
import { sheetOf, type Sheet } from './sheet.ts';

export interface CheckPageMaking {
  readonly paper: PaperName;
  readonly language?: Language;
  readonly fonts: ShippedFonts;
  /** ISO 8601. */
  readonly madeAt: string;
}

/** The page that tells whether a printer keeps the scale. */
export function makeCheckPage({ paper, language = 'en', fonts, madeAt }: CheckPageMaking): Sheet {
  const paperId = sha256Hex(`checkPage ${paper} ${language}`).slice(0, 32);
  const made = { paper, language, fonts: fonts.metrics, madeAt, paperId };
  return sheetOf(drawCheckPage(made), [], { fonts });
}
