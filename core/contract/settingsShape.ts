import { z } from 'zod';
import { languages, type Language } from '../base/language.ts';

export const contrasts = ['system', 'high'] as const;

/** What a person chose for this computer. Absent means not chosen: the page decides. */
export interface Settings {
  readonly language?: Language;
  /** `system` follows what the computer asks for. */
  readonly contrast?: (typeof contrasts)[number];
  /** Share of the window that the tables take, per cent. */
  readonly tablesPercent?: number;
}

/** Settings as they lie in a file or come from a page. */
export const settings: z.ZodType<Settings> = z.strictObject({
  language: z.enum(languages).exactOptional(),
  contrast: z.enum(contrasts).exactOptional(),
  tablesPercent: z.number().min(5).max(95).exactOptional(),
});
