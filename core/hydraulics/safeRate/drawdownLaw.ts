import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import { transmissivityAcross } from '../acrossMethods.ts';
import { analyseTests, testInWell } from '../analyseTests.ts';
import type { AssumptionCode, SourceId } from '../codes.ts';
import { halfWidth } from '../fit/leastSquares.ts';
import { lastPart, type Stretch } from '../fit/straightPart.ts';
import { heightHalfWidth, lineAt, slopeHalfWidth } from '../fit/line.ts';
import { checksOf } from '../methods/chooseReadings.ts';
import { fitSteps } from '../methods/edenHazel.ts';
import { lossLine, stepEnds } from '../methods/hantushBierschenk.ts';
import { assumed } from '../methods/said.ts';
import { drawLine, pumpingAxis, type StraightLine } from '../methods/straightLine.ts';
import { oncePerState } from '../oncePerState.ts';
import type { AnalysisChoices, Check, M3PerDay, Said, TestAnalysis } from '../results.ts';
import { drawnOut, told, type Told } from './drawnOut.ts';

/**
 * Drawdown of the well at any rate after some log cycles of minutes:
 * s = Q · perRate + C · Q · (Q − reference), d/m², d²/m⁵ and m³/d.
 */
export interface DrawdownLaw {
  readonly perRate: Told;
  readonly wellLoss: Told;
  readonly referenceM3d: M3PerDay;
  readonly checks: readonly Check[];
  readonly assumptions: readonly Said<AssumptionCode>[];
  readonly sources: readonly SourceId[];
}

/** The tests of a kind, the last in the record first. */
function latest(record: WellRecord, kind: 'constantRate' | 'step'): number[] {
  const tests = record.tests ?? [];
  return tests.flatMap((test, at) => (test.kind === kind ? [at] : [])).reverse();
}

/** C of the latest step test that gives one. */
function wellLossOf(record: WellRecord, model: WellModel, choices: AnalysisChoices) {
  for (const index of latest(record, 'step')) {
    const { reduced, setting } = testInWell(record, model, index, choices);
    const line = lossLine(stepEnds(reduced, fitSteps(reduced, setting)).ends);
    if (line) return told(line.slope, slopeHalfWidth(line));
  }
  return undefined;
}

/**
 * The stretch to draw out: the straight part, unless the drawdown gets steeper after it. Then the
 * last readings, since a boundary that was met stays. A window by hand is taken as it is.
 */
function stretchToDrawOut({ on, stretch, how }: StraightLine, { hints }: TestAnalysis): Stretch {
  const steeper = hints.some(({ code }) => code === 'slopeDoubling' || code === 'slopeSteeper');
  const late = steeper && how !== 'byHand' ? lastPart(on) : undefined;
  return late && late.line.slope > stretch.line.slope ? late : stretch;
}

function fromConstantRate(
  record: WellRecord,
  model: WellModel,
  cycles: number,
  choices: AnalysisChoices,
  analyses: readonly TestAnalysis[],
): DrawdownLaw | undefined {
  const across = transmissivityAcross(analyses);
  const loss = wellLossOf(record, model, choices);
  for (const index of latest(record, 'constantRate')) {
    const { reduced, setting } = testInWell(record, model, index, choices);
    const drawn = drawLine(pumpingAxis(reduced), setting);
    if (!drawn) continue;
    const stretch = stretchToDrawOut(drawn, analyses[index]!);
    const { line, last } = stretch;
    const referenceM3d = drawn.on.rateM3d;
    const from = drawn.on.x[last]!;
    const reach = {
      from,
      to: cycles,
      height: lineAt(line, from) / referenceM3d,
      half: (heightHalfWidth(line, from) ?? 0) / referenceM3d,
      slope: line.slope / referenceM3d,
    };
    return {
      perRate: drawnOut(reach, across),
      wellLoss: loss ?? told(0),
      referenceM3d,
      checks: checksOf(drawn.on, stretch, setting),
      assumptions: [
        ...reduced.assumptions,
        ...(stretch === drawn.stretch ? [] : [assumed('lateSlope')]),
        loss ? assumed('lossFromSteps', { C: loss.value }) : assumed('lossInLine'),
      ],
      sources: ['cooperJacob1946', ...(loss ? (['hantushBierschenk'] as const) : [])],
    };
  }
  return undefined;
}

function fromSteps(
  record: WellRecord,
  model: WellModel,
  cycles: number,
  choices: AnalysisChoices,
  analyses: readonly TestAnalysis[],
): DrawdownLaw | undefined {
  const across = transmissivityAcross(analyses);
  for (const index of latest(record, 'step')) {
    const { reduced, setting } = testInWell(record, model, index, choices);
    const all = fitSteps(reduced, setting);
    if (!all) continue;
    const { fit, used, slopePerRate, aquiferLoss, wellLoss } = all;
    const from = Math.log10(used.at(-1)!.step!.minutes);
    const reach = {
      from,
      to: cycles,
      height: slopePerRate * from + aquiferLoss,
      half: halfWidth(fit, [from, 1, 0]),
      slope: slopePerRate,
    };
    return {
      perRate: drawnOut(reach, across),
      wellLoss: told(wellLoss, halfWidth(fit, [0, 0, 1])),
      referenceM3d: 0,
      checks: [],
      assumptions: [...reduced.assumptions, assumed('lossFromSteps', { C: wellLoss })],
      sources: ['edenHazel1973'],
    };
  }
  return undefined;
}

/**
 * How the well draws down after `cycles` log cycles of minutes: by the latest constant-rate test
 * with the well loss of the latest step test, else by the step test alone. Undefined where neither
 * gives a line. Of a frozen record it is found once.
 */
export function drawdownLaw(
  record: WellRecord,
  model: WellModel,
  cycles: number,
  choices: AnalysisChoices,
): DrawdownLaw | undefined {
  return oncePerState(record, model, `law ${cycles} ${JSON.stringify(choices)}`, () => {
    const analyses = analyseTests(record, model, choices);
    return (
      fromConstantRate(record, model, cycles, choices, analyses) ??
      fromSteps(record, model, cycles, choices, analyses)
    );
  });
}

/** One pair of ends of the intervals of a law. */
interface Corner {
  readonly perRate: number;
  readonly wellLoss: number;
}

/** The law's own values first, then all pairs of interval ends. A loss below nil counts as nil. */
export function cornersOf({ perRate, wellLoss }: DrawdownLaw): Corner[] {
  const pairs = [perRate.low, perRate.high].flatMap((one) =>
    [wellLoss.low, wellLoss.high].map((loss) => ({ perRate: one, wellLoss: Math.max(0, loss) })),
  );
  return [{ perRate: perRate.value, wellLoss: Math.max(0, wellLoss.value) }, ...pairs];
}

/** Drawdown at a rate, metres. */
export function drawdownAt(
  { referenceM3d }: DrawdownLaw,
  { perRate, wellLoss }: Corner,
  rateM3d: M3PerDay,
) {
  return rateM3d * perRate + wellLoss * rateM3d * (rateM3d - referenceM3d);
}

/** Rate that draws the water down by so much, m³/d; infinite where no drawdown is to be had. */
export function rateFor(
  { referenceM3d }: DrawdownLaw,
  { perRate, wellLoss }: Corner,
  drawdownM: number,
): M3PerDay {
  if (!(drawdownM > 0)) return 0;
  const linear = perRate - wellLoss * referenceM3d;
  if (wellLoss === 0) return linear > 0 ? drawdownM / linear : Infinity;
  // Of both forms of the root the one that loses no digits to a small C.
  const root = Math.sqrt(linear ** 2 + 4 * wellLoss * drawdownM);
  return linear > 0 ? (2 * drawdownM) / (linear + root) : (root - linear) / (2 * wellLoss);
}
