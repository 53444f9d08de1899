import type { PracticeFile } from '../../core/practice/practice.ts';
import { modelFindings } from '../../core/model/findings.ts';
import { rules } from '../../core/practice/rules/index.ts';
import { ruleCodes } from '../../core/practice/rules/ruleCodes.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import { shippedGuidelines } from '../../core/water/guidelines/shippedGuidelines.ts';
import { pumpKinds } from '../../core/water/pump/kinds.ts';
import type { FindingCount } from '../archive/lists.ts';
import type { FindingCounts } from '../archive/tables/sights.ts';
import { sha256Hex } from '../seal/hash.ts';
import { reckonWell } from './reckonWell.ts';
import { readDocument } from './stored.ts';

/** A record that cannot be read is wrong as a whole. */
const unreadable: FindingCounts = { errors: 1, warnings: 0, notes: 0 };

/** What the user judges by beside what is shipped. */
export interface OwnStandards {
  readonly practices: readonly PracticeFile[];
  readonly guidelines: readonly GuidelineFile[];
}

/** How many findings there are about a record in any condition: the model's and the rules'. */
function countFindings(document: unknown, own: OwnStandards): FindingCounts {
  const reading = readDocument(document);
  if (!reading.ok) return unreadable;
  const files = { own: own.practices, ownGuidelines: own.guidelines };
  const { model, judgement } = reckonWell(reading.value.record, files);
  const all = [...model.findings, ...judgement.findings];
  const of = (weight: string) => all.filter(({ severity }) => severity === weight).length;
  return { errors: of('error'), warnings: of('warning'), notes: of('note') };
}

/** What can be found by this program whatever the practice. */
const found = JSON.stringify([
  modelFindings,
  ruleCodes,
  rules.map(({ id, figures }) => [id, figures]),
  shippedPractices,
  shippedGuidelines,
  pumpKinds,
]);

/**
 * Counts by the practices and guideline values of the user beside those that are shipped. Its
 * number follows from what can be found and from all of these: another program, or another figure,
 * counts anew.
 */
export function findingCountBy(own: OwnStandards): FindingCount {
  const number = 1 + parseInt(sha256Hex(found + JSON.stringify(own)).slice(0, 8), 16);
  return { number, count: (document) => countFindings(document, own) };
}
