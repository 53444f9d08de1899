import type { PaperMm } from '../../../../base/units.ts';
import type { TestAnalysis } from '../../../../hydraulics/results.ts';
import { sayFigure, sayHint } from '../../../../hydraulics/sayHydraulics.ts';
import { depthFigure, momentFigure } from '../../../figures.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, rowPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import type { TestKit } from './testKit.ts';

const hoursPerDay = 24;
/** More rates than these are told by the first and the last. */
const mostRates = 8;

function ratesOf(kit: TestKit, { rates }: TestAnalysis): string {
  const figures = rates.map(({ rateM3d }) => sayFigure(rateM3d / hoursPerDay, kit.language));
  if (figures.length === 0) return '';
  const shown =
    figures.length > mostRates
      ? `${figures[0]} … ${figures.at(-1)}`
      : figures.join(kit.words.decimalMark === ',' ? '; ' : ', ');
  return `${shown} m³/h`;
}

/** Reasons for which readings were left out, with how many each. */
function leftOutOf({ analysis }: TestKit, { leftOut }: TestAnalysis): string {
  const reasons = [...new Set(leftOut.map(({ why }) => why))];
  const count = (reason: string) => leftOut.filter(({ why }) => why === reason).length;
  return reasons.map((reason) => `${count(reason)} ${analysis.leftOut[reason]}`).join('; ');
}

function deepestOf(kit: TestKit, { readings }: TestAnalysis): string {
  if (readings.length === 0) return '';
  const deepest = readings.reduce((a, b) => (b.drawdownM > a.drawdownM ? b : a));
  const minutes = sayFigure(deepest.minutes, kit.language);
  return `${depthFigure(kit, deepest.drawdownM)} m, ${minutes} min`;
}

/** How the derivative of the log-log plot was smoothed; a recovery has no such plot. */
function smoothingOf({ own, language }: TestKit, { kind, derivative }: TestAnalysis): string {
  if (kind !== 'constantRate' || !derivative) return '';
  return own.smoothed.replace('{smoothing}', sayFigure(derivative.smoothing, language));
}

/** When and how a test was made, what of it could be used, and what is missing. */
export function factPieces(kit: TestKit, test: TestAnalysis, width: PaperMm): Piece[] {
  const { own, analysis, language } = kit;
  const { facts } = own;
  const minutes = (value: number | undefined) =>
    value === undefined ? '' : `${sayFigure(value, language)} min`;
  const rows: [string, string][] = [
    [facts.started, test.startedAt === undefined ? '' : momentFigure(test.startedAt)],
    [facts.rates, ratesOf(kit, test)],
    [facts.pumped, minutes(test.pumpedMin)],
    [facts.rest, test.restDepthM === undefined ? '' : `${depthFigure(kit, test.restDepthM)} m`],
    [facts.deepest, test.kind === 'recovery' ? '' : deepestOf(kit, test)],
    [facts.readings, String(test.readings.length)],
    [facts.leftOut, leftOutOf(kit, test)],
    [facts.storage, minutes(test.casingStorageMin)],
    [facts.derivative, smoothingOf(kit, test)],
    [facts.missing, test.missing.map(({ what }) => analysis.missing[what]).join('; ')],
  ];
  return [
    titlePiece(kit, facts.title, width),
    ...rows
      .filter(([, says]) => says !== '')
      .map(([what, says]) =>
        rowPiece(
          kit,
          [
            { width: width * 0.46, text: what },
            { width: width * 0.54, text: says },
          ],
          { source: test.path },
        ),
      ),
    ...test.hints.flatMap((hint) =>
      textPieces(kit, `• ${sayHint(hint, language)}`, width, { source: test.path }),
    ),
    gapPiece(1.6),
  ];
}
