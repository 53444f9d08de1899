import type { Language } from '../../../../../core/base/language.ts';
import {
  roomy,
  type CommitteeKit,
} from '../../../../../core/drawing/papers/committee/committeeKit.ts';
import { committeeWordsIn } from '../../../../../core/drawing/papers/committee/words/languages.ts';
import type { Block } from '../../../../../core/drawing/parts/block.ts';
import { sheetWordsIn } from '../../../../../core/drawing/words/languages.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { kit as plain, wordsIn } from '../../trial.ts';

export function kitIn(language: Language = 'en', record: WellRecord = { schemaVersion: 1 }) {
  const kit: CommitteeKit = {
    fonts: plain.fonts,
    words: sheetWordsIn(language),
    own: committeeWordsIn(language),
    practice: practiceOf(record),
    spacing: roomy,
  };
  return kit;
}

/** All that a block says, as one line. */
export function saidBy(block: Block): string {
  return block.draw(20, 20).flatMap(wordsIn).join(' ');
}
