import { z } from 'zod';
import { languages, type Language } from '../base/language.ts';
import { orientations, type Orientation } from '../drawing/paper.ts';
import { switchedColumns, type SwitchedColumn } from '../drawing/parts/columnNames.ts';

/** How the depth axis of as-built sheets is drawn. */
export const axes = ['fitting', 'whole'] as const;

export const contrasts = ['system', 'high'] as const;

/** What a person chose for this computer. Absent means not chosen: the page decides. */
export interface Settings {
  readonly language?: Language;
  /** The name that stands beside revisions made on this computer. */
  readonly author?: string;
  /** `system` follows what the computer asks for. */
  readonly contrast?: (typeof contrasts)[number];
  /** Share of the window that the tables take, per cent. */
  readonly tablesPercent?: number;
  /** How as-built sheets lie: one way, or each size as is usual for it. */
  readonly sheetOrientation?: Orientation | 'usual';
  /** Columns of the log on as-built sheets: a choice, or what each record brings. */
  readonly sheetColumns?: readonly SwitchedColumn[] | 'byRecord';
  /** Whether as-built sheets leave out long plain stretches where that helps, or never. */
  readonly sheetAxis?: (typeof axes)[number];
}

/** Settings as they lie in a file or come from a page. */
export const settings: z.ZodType<Settings> = z.strictObject({
  language: z.enum(languages).exactOptional(),
  author: z.string().max(120).exactOptional(),
  contrast: z.enum(contrasts).exactOptional(),
  tablesPercent: z.number().min(5).max(95).exactOptional(),
  sheetOrientation: z.enum([...orientations, 'usual']).exactOptional(),
  sheetColumns: z.union([z.array(z.enum(switchedColumns)), z.literal('byRecord')]).exactOptional(),
  sheetAxis: z.enum(axes).exactOptional(),
});
