import type { WellModel } from '../../../model/wellModel.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { guidelinesOf } from '../../../water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../../water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../../../water/quality/judgeQuality.ts';
import { again, type Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import type { Part, Piece } from '../../parts/flow/part.ts';
import type { Closeness } from './closeness.ts';
import { flowWidth } from './flowColumns.ts';
import { qualityPieces } from './quality/qualityPieces.ts';
import type { SheetInput } from './sheetInput.ts';
import { shownTests } from './tests/shownTests.ts';
import { testPieces } from './tests/testPieces.ts';

function layTests(
  kit: Kit,
  record: WellRecord,
  model: WellModel,
  practice: Practice | undefined,
  paper: Paper,
  closeness: Closeness,
): Piece[] {
  const shown = shownTests(record, model, practice);
  return testPieces(kit, shown, flowWidth(paper), closeness);
}

/** The record without what nothing of a pumping test looks at. */
function testedRecord(record: WellRecord): WellRecord {
  const others: WellRecord = { ...record };
  for (const chapter of ['log', 'notes', 'photos', 'marks', 'quality'] as const)
    delete others[chapter];
  return Object.isFrozen(record) ? Object.freeze(others) : others;
}

function testsOf({ kit, record, model, judgement, paper }: SheetInput, closeness: Closeness) {
  if (!record.tests?.length) return [];
  const practice = judgement?.practice;
  // Without a memory the whole record is asked, since its tests were analysed for other papers.
  if (!kit.memory) return layTests(kit, record, model, practice, paper, closeness);
  const built: WellModel = { ...model, strata: [], samples: [], findings: [] };
  return again(kit, 'tests', layTests, testedRecord(record), built, practice, paper, closeness);
}

function layQuality(
  kit: Kit,
  record: WellRecord,
  guidelines: GuidelineSet | undefined,
  paper: Paper,
): Piece[] {
  const result = judgeQuality(record, guidelines ?? guidelinesOf(undefined));
  return qualityPieces(kit, record, result, flowWidth(paper));
}

function qualityOf({ kit, record, guidelines, paper }: SheetInput): Piece[] {
  const { schemaVersion, quality = [], disinfection = [] } = record;
  if (quality.length === 0) return [];
  const sampled: WellRecord = { schemaVersion, quality, disinfection };
  return again(kit, 'quality', layQuality, sampled, guidelines, paper);
}

/** What pumping tests tell; without tests, nothing. It looks at nothing that describes the ground. */
export function testsPart(input: SheetInput, closeness: Closeness): Part<'tests'> {
  return { name: 'tests', pieces: testsOf(input, closeness) };
}

/** What water samples tell, which is set in one manner; nothing without samples. */
export function qualityPart(input: SheetInput): Part<'quality'> {
  return { name: 'quality', pieces: qualityOf(input) };
}
