import type { Language } from '../../core/base/language.ts';
import type { Drawing } from '../../core/drawing/items.ts';
import { paperOf, type Orientation, type Paper, type PaperName } from '../../core/drawing/paper.ts';
import type { SwitchedColumn } from '../../core/drawing/parts/columnNames.ts';
import type { PhotoImages } from '../../core/drawing/parts/photos.ts';
import { drawAsBuilt } from '../../core/drawing/papers/asBuilt.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import type { SheetWords } from '../../core/drawing/words/words.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import { judgedWell } from '../../core/judging/judgedWell.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { readFonts } from '../../electron/files/fonts.ts';

export const fonts = readFonts();

/** A sheet with all that a law compares it with. */
export interface DrawnSheet {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly paper: Paper;
  readonly drawing: Drawing;
  /** Words of the sheet's language. */
  readonly words: SheetWords;
}

export { paperNames } from '../../core/drawing/paper.ts';

/** What a person chooses of a sheet besides its size and language. */
export interface SheetChoices {
  readonly orientation?: Orientation;
  readonly columns?: readonly SwitchedColumn[];
}

/** The as-built sheet of a record, made at a fixed moment. */
export function drawSheet(
  record: WellRecord,
  name: PaperName,
  language: Language = 'en',
  images: PhotoImages = {},
  more: SheetChoices = {},
): DrawnSheet {
  const model = resolveWell(record);
  const drawing = drawAsBuilt(record, model, {
    paper: name,
    language,
    fonts: fonts.metrics,
    madeAt: '2026-01-31T12:00:00+00:00',
    paperId: '0123456789abcdef0123456789abcdef',
    revision: 3,
    images,
    ...more,
    judgement: judgedWell(record, model, practiceOf(record)),
  });
  return {
    record,
    model,
    paper: paperOf(name, more.orientation),
    drawing,
    words: sheetWordsIn(language),
  };
}
