import type { WellModel } from '../../../model/wellModel.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { guidelinesOf } from '../../../water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../../water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../../../water/quality/judgeQuality.ts';
import type { Item } from '../../items.ts';
import { again, type Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import { flowPages, flowWidth } from './flowPages.ts';
import { qualityPieces } from './quality/qualityPieces.ts';
import type { SheetInput } from './sheetInput.ts';
import { shownTests } from './tests/shownTests.ts';
import { testPieces } from './tests/testPieces.ts';
import { qualityWordsIn } from './words/qualityLanguages.ts';
import { testWordsIn } from './words/testLanguages.ts';

/** A page of what was found out about the water. */
export interface WaterPage {
  /** Name of the group that its items stand in. */
  readonly name: 'tests' | 'quality';
  /** For the title block. */
  readonly document: string;
  readonly items: readonly Item[];
}

function layTests(
  kit: Kit,
  record: WellRecord,
  model: WellModel,
  practice: Practice | undefined,
  paper: Paper,
): Item[][] {
  const shown = shownTests(record, model, practice);
  return flowPages(paper, testPieces(kit, shown, flowWidth(paper)));
}

/** Pages of the pumping tests; they look at nothing that describes the ground or is only said. */
function testPages({ kit, record, model, judgement, paper }: SheetInput): Item[][] {
  if (!record.tests?.length) return [];
  const others: WellRecord = { ...record };
  for (const chapter of ['log', 'notes', 'photos', 'marks', 'quality'] as const)
    delete others[chapter];
  const built: WellModel = { ...model, strata: [], samples: [], findings: [] };
  return again(kit, 'tests', layTests, others, built, judgement?.practice, paper);
}

function layQuality(
  kit: Kit,
  record: WellRecord,
  guidelines: GuidelineSet | undefined,
  paper: Paper,
): Item[][] {
  const result = judgeQuality(record, guidelines ?? guidelinesOf(undefined));
  return flowPages(paper, qualityPieces(kit, record, result, flowWidth(paper)));
}

function qualityPages({ kit, record, guidelines, paper }: SheetInput): Item[][] {
  const { schemaVersion, quality = [], disinfection = [] } = record;
  if (quality.length === 0) return [];
  const sampled: WellRecord = { schemaVersion, quality, disinfection };
  return again(kit, 'quality', layQuality, sampled, guidelines, paper);
}

/** Pages of what pumping tests and water samples tell; none without tests or samples. */
export function waterPages(input: SheetInput): WaterPage[] {
  const { language } = input.kit.words;
  const tests = testWordsIn(language).document;
  const quality = qualityWordsIn(language).document;
  return [
    ...testPages(input).map((items) => ({ name: 'tests', document: tests, items }) as const),
    ...qualityPages(input).map((items) => ({ name: 'quality', document: quality, items }) as const),
  ];
}
