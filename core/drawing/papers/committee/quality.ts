import { filled } from '../../../base/text/filled.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { GuidelineSet } from '../../../water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../../../water/quality/judgeQuality.ts';
import type { ParameterResult, QualityResult, ValueState } from '../../../water/results.ts';
import type { Block } from '../../parts/block.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { dayInWords } from './days.ts';
import { layParagraphs, type Paragraph } from './paragraphs.ts';

const past: readonly ValueState[] = ['above', 'below'];
/** Chlorine that was put in is looked for to see that it is gone, not as a fault of the water. */
const treatment = 'freeChlorine';
const unclear: readonly ValueState[] = ['limitTooHigh', 'formUnknown', 'unitUnknown'];

function isPast(state: ValueState | undefined): boolean {
  return state !== undefined && past.includes(state);
}

/** A sentence that lists parameters; none where there are none. */
function listed(
  kit: CommitteeKit,
  sentence: string,
  found: readonly ParameterResult[],
  bold = false,
): Paragraph[] {
  if (found.length === 0) return [];
  const what = found.map(({ name }) => name[kit.words.language]).join(', ');
  return [{ says: filled(sentence, { what }), source: found[0]?.last?.path ?? 'quality', bold }];
}

/** Samples that the compared readings are of, in order of time, each as a sentence. */
function samplesOf(
  kit: CommitteeKit,
  { quality = [] }: WellRecord,
  { parameters }: QualityResult,
): Paragraph[] {
  const { sample, sampleHere } = kit.own.quality;
  const compared = parameters.filter(({ comparisons }) => comparisons.length > 0);
  const used = new Set(compared.flatMap(({ last }) => last?.sample ?? []));
  return quality.flatMap((one, at): Paragraph[] => {
    if (!used.has(at)) return [];
    const day = one.takenAt === undefined ? '–' : dayInWords(kit, one.takenAt);
    const source: RecordPath = `quality[${at}]`;
    if (one.laboratory === undefined)
      return [{ says: filled(sampleHere, { day }), source, byHand: true }];
    return [{ says: filled(sample, { day, laboratory: one.laboratory }), source }];
  });
}

function foundIn(kit: CommitteeKit, record: WellRecord, result: QualityResult): Paragraph[] {
  const { quality } = kit.own;
  const { parameters, missingBeforeHandover } = result;
  const health = parameters.filter((one) => isPast(one.health));
  const use = parameters.filter((one) => !isPast(one.health) && isPast(one.use));
  const open = parameters.filter((one) => one.health && unclear.includes(one.health));
  const kept = parameters.filter(
    (one) => one.health === 'within' && !isPast(one.use) && one.parameter !== treatment,
  );
  const missing = parameters.filter(({ parameter }) => missingBeforeHandover.includes(parameter));
  return [
    ...samplesOf(kit, record, result),
    ...listed(kit, quality.aboveHealth, health, true),
    ...listed(kit, quality.aboveUse, use),
    ...listed(kit, quality.unclear, open),
    ...listed(kit, quality.notAbove, kept),
    ...listed(kit, quality.notTested, missing, true),
  ];
}

/** What the samples told, in plain words; whether the water may be drunk is not for it to say. */
export function layQuality(
  kit: CommitteeKit,
  record: WellRecord,
  guidelines: GuidelineSet,
  width: PaperMm,
): Block {
  const { quality } = kit.own;
  const result = judgeQuality(record, guidelines);
  const untested: Paragraph[] = [
    { says: quality.none, source: 'quality', bold: true },
    { says: quality.noneDay, byHand: true },
    { says: quality.laboratory, byHand: true },
  ];
  const tested = result.parameters.some(({ last }) => last !== undefined);
  const found = tested ? foundIn(kit, record, result) : untested;
  const paragraphs = [...found, { says: quality.again }];
  return layParagraphs(kit, quality.title, paragraphs, width, 'sample');
}
