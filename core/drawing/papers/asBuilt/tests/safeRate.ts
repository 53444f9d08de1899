import type { PaperMm } from '../../../../base/units.ts';
import type { Estimate, SafeRate, SafeRateAnswer } from '../../../../hydraulics/results.ts';
import { sayAssumption, sayCheck, sayFigure } from '../../../../hydraulics/sayHydraulics.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, rowPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import type { CheckCode } from '../../../../hydraulics/codes.ts';
import { estimateTable, figureWithUnit } from './results.ts';
import type { TestKit } from './testKit.ts';

function limitRows(kit: TestKit, safe: SafeRate, width: PaperMm): Piece[] {
  const { own, analysis } = kit;
  const metres = (value: number) => figureWithUnit(kit, value, 'm');
  const rows = [
    [own.safe.dryLevel, metres(safe.drySeasonLevelM)],
    [own.safe.deepestLevel, `${metres(safe.deepestLevelM)} (${analysis.limits[safe.setBy]})`],
    [own.safe.available, metres(safe.availableM)],
    [own.safe.tested, figureWithUnit(kit, safe.testedM3h, 'm³/h')],
  ] as const;
  return rows.map(([what, says]) =>
    rowPiece(
      kit,
      [
        { width: width * 0.37, text: what },
        { width: width * 0.63, text: says },
      ],
      { source: 'tests' },
    ),
  );
}

/** What is said of the rate itself; how far the tests hold is said beside them, if they do. */
const ofRate: readonly CheckCode[] = [
  'withinTested',
  'waterAvailable',
  'askedWithinSafe',
  'intakeDeepEnough',
];

function knownPieces(kit: TestKit, safe: SafeRate, width: PaperMm): Piece[] {
  const { own, words, analysis, language } = kit;
  const { rateM3h, drawdown, pumpingLevel, intake } = safe.atRate;
  const at = own.safe.atRate.replace('{rate}', sayFigure(rateM3h, language));
  const checks = safe.checks.filter(({ code, holds }) => !holds || ofRate.includes(code));
  const rates: Estimate[] = [safe.safe, safe.byDrawdown];
  const sources = [...new Set(safe.sources)].map((one) => analysis.sources[one]).join('; ');
  const assumed = safe.assumptions.map((one) => sayAssumption(one, language)).join(' ');
  return [
    ...estimateTable(kit, own.safe.quantity, rates, width),
    ...limitRows(kit, safe, width),
    gapPiece(1.6),
    ...estimateTable(kit, at, [drawdown, pumpingLevel, intake], width),
    ...checks.flatMap((one) => {
      const says = sayCheck(one, language);
      return one.holds
        ? textPieces(kit, `• ${says}`, width)
        : textPieces(kit, `• ${own.notMet}${words.colon} ${says}`, width, { face: 'bold' });
    }),
    ...textPieces(kit, `${own.assumptions}${words.colon} ${assumed}`, width),
    ...textPieces(kit, `${own.source}${words.colon} ${sources}.`, width),
  ];
}

/** The rate that the well stands in the dry season, or what is missing to tell it. */
export function safeRatePieces(kit: TestKit, answer: SafeRateAnswer, width: PaperMm): Piece[] {
  const { own, words, analysis } = kit;
  const missing = answer.known ? [] : answer.missing.map(({ what }) => analysis.missing[what]);
  return [
    titlePiece(kit, own.safe.title, width),
    ...(answer.known
      ? knownPieces(kit, answer.value, width)
      : textPieces(kit, `${own.safe.missing}${words.colon} ${missing.join('; ')}.`, width)),
    ...textPieces(kit, own.safe.caution, width, { face: 'bold' }),
  ];
}
