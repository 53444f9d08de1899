import type { Language } from '../../core/base/language.ts';
import { paperOf, type PaperName } from '../../core/drawing/paper.ts';
import { drawCommittee } from '../../core/drawing/papers/committee.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { fonts, type DrawnSheet } from './drawn.ts';
import { laws } from './laws/index.ts';

/** The committee sheet of a record, made at a fixed moment. */
export function drawCommitteeSheet(
  record: WellRecord,
  languages: readonly Language[] = ['en'],
  paper: PaperName = 'A4',
): DrawnSheet {
  const model = resolveWell(record);
  const drawing = drawCommittee(record, model, {
    languages,
    paper,
    fonts: fonts.metrics,
    madeAt: '2026-01-31T12:00:00+00:00',
    paperId: '0123456789abcdef0123456789abcdef',
    revision: 3,
  });
  const words = sheetWordsIn(languages[0] ?? 'en');
  return { record, model, paper: paperOf(paper), drawing, words };
}

/** Laws of a sheet that has a plain picture instead of a log and a section to scale. */
const ofThisSheet: readonly string[] = [
  'nothing leaves the frame',
  'no text is cut by a clip',
  'no two texts stand on one another',
  'every text is as wide as its font says, with a glyph for each letter',
  'items are of the six kinds',
  'every measure is a finite number',
  'every hatch used is carried, and no other',
];

/** What a committee sheet does against each law that it is under; empty where it keeps them. */
export function brokenByCommittee(sheet: DrawnSheet): Record<string, string[]> {
  const found = ofThisSheet.map((name) => [name, laws[name]!(sheet)] as const);
  return Object.fromEntries(found.filter(([, complaints]) => complaints.length > 0));
}
