import type { Language } from '../../core/base/language.ts';
import { paperOf } from '../../core/drawing/paper.ts';
import { drawLayingOut } from '../../core/drawing/papers/layingOut.ts';
import { laidOutOf, type LaidOut } from '../../core/drawing/papers/layingOut/laidOut.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { fonts, type DrawnSheet } from './drawn.ts';
import { laws } from './laws/index.ts';

/** A model whose parts lead to where they stand in the record that was handed in. */
function leading({ model, pathOf }: LaidOut): WellModel {
  const isPath = (key: string) => key === 'path' || key === 'capPath';
  return JSON.parse(JSON.stringify(model), (key, value: unknown) =>
    isPath(key) && typeof value === 'string' ? pathOf(value) : value,
  ) as WellModel;
}

/** The laying-out sheet of a record, made at a fixed moment, with the model that it is drawn from. */
export function drawLaidOut(record: WellRecord, language: Language = 'en'): DrawnSheet {
  const model = resolveWell(record);
  const drawing = drawLayingOut(record, model, {
    language,
    fonts: fonts.metrics,
    madeAt: '2026-01-31T12:00:00+00:00',
    paperId: '0123456789abcdef0123456789abcdef',
    revision: 3,
  });
  const laid = laidOutOf(record, model);
  const words = sheetWordsIn(language);
  return { record, model: leading(laid), paper: paperOf('A4'), drawing, words };
}

/** What a sketch without water and without words for the ground cannot keep. */
const notOfThisSheet: readonly string[] = [
  'strikes, levels and intake point at their depth, on one page',
  'every part of the well is shown',
  'every description stands in full or is counted as left out',
  'a description that was cut says so',
  'the particulars stand in full or say that they were cut',
];

/** What a laying-out sheet does against each law that it is under; empty where it keeps them. */
export function brokenByLaidOut(sheet: DrawnSheet): Record<string, string[]> {
  const kept = Object.entries(laws).filter(([name]) => !notOfThisSheet.includes(name));
  const found = kept.map(([name, law]) => [name, law(sheet)] as const);
  return Object.fromEntries(found.filter(([, complaints]) => complaints.length > 0));
}
