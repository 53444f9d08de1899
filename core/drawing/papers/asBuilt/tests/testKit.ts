import type { Language } from '../../../../base/language.ts';
import type { SafeRateAnswer, TestAnalysis } from '../../../../hydraulics/results.ts';
import { hydraulicsWords } from '../../../../hydraulics/sayHydraulics.ts';
import type { HydraulicsWords } from '../../../../hydraulics/words/words.ts';
import type { Kit } from '../../../kit.ts';
import type { TestWords } from '../testWords.ts';
import { testWordsIn } from '../words/testLanguages.ts';

/** Pumping tests of a well with what they say of its use. */
export interface ShownTests {
  readonly analyses: readonly TestAnalysis[];
  /** Absent where nobody asked for it. */
  readonly safe?: SafeRateAnswer;
}

/** Words of the pages of pumping tests beside those of all pages. */
export interface TestKit extends Kit {
  readonly own: TestWords;
  readonly analysis: HydraulicsWords;
  readonly language: Language;
}

export function testKit(kit: Kit): TestKit {
  const { language } = kit.words;
  return { ...kit, language, own: testWordsIn(language), analysis: hydraulicsWords(language) };
}
