import type { FigureId } from '../practice/figures.ts';
import type { Practice } from '../practice/practice.ts';
import type { LayingOut } from '../record/layingOut.ts';
import { cmOf, type Centimetres } from './centimetres.ts';

/** A cut piece is no shorter: less can neither be held nor glued. Common practice. */
export const shortestPieceCm = 50;

/**
 * Screened share of an aquifer that the safest completion asks for: its lower third. Driscoll,
 * Groundwater and Wells, 1986, for unconfined aquifers (from memory).
 */
export const screenedShare = 1 / 3;

/** No less screen is asked for where the ground allows it: about one pipe. Common practice. */
const screenLeastCm = 250;

/** The limits of a practice that a completion is searched by. */
export interface Limits {
  readonly underDryCm: Centimetres;
  readonly underPumpingCm: Centimetres;
  readonly sumpLeastCm: Centimetres;
  readonly sumpMostCm: Centimetres;
  readonly packCm: Centimetres;
  readonly clayCm: Centimetres;
  /** Clay that at least keeps the sanitary seal's grout out of the pack; both together seal. */
  readonly clayUnderGroutCm: Centimetres;
  /** A seal that parts two aquifers stands in the ground between them for at least this. */
  readonly partingClayCm: Centimetres;
  readonly sanitaryCm: Centimetres;
  readonly stickUpLeastCm: Centimetres;
  readonly stickUpMostCm: Centimetres;
  readonly aquitardCm: Centimetres;
  /** Most of a screen that may stand in tight ground, as a share. */
  readonly tightShare: number;
  /** Screen asked for at least, as far as there is good ground. */
  readonly screenLeastCm: Centimetres;
  /** Open area of the whole screen, square centimetres; 0 where the rate is not known. */
  readonly openAreaCm2: number;
}

const cm2PerM2 = 1e4;
const secondsPerHour = 3600;

/** Open area that lets a rate (m³/h) in no faster than the practice allows, part of it clogged. */
function openAreaFor(rateM3h: number, practice: Practice): number {
  const { entranceVelocityMs, openShare } = practice.figures;
  return (rateM3h / secondsPerHour / entranceVelocityMs.value / openShare.value) * cm2PerM2;
}

/** A casing that is to stand higher is a slip of the pen. Metres. */
const highestM = 3;

/** The stick-up as the site wants it, as near as a tally comes, else as the practice allows. */
function stickUp({ stickUp: wantedM }: LayingOut, practice: Practice) {
  const figure = (id: FigureId) => cmOf(practice.figures[id].value);
  const [leastCm, mostCm] = [figure('stickUpLeastM'), figure('stickUpMostM')];
  if (wantedM === undefined || !(wantedM <= highestM)) return { leastCm, mostCm };
  const nearCm = figure('tallyToleranceM');
  const [fromCm, toCm] = [cmOf(wantedM) - nearCm, cmOf(wantedM) + nearCm];
  const [lowCm, highCm] = [Math.max(fromCm, leastCm), Math.min(toCm, mostCm)];
  return lowCm <= highCm ? { leastCm: lowCm, mostCm: highCm } : { leastCm: fromCm, mostCm: toCm };
}

/** The limits in full, for a well that is to give a rate (m³/h) where that is known. */
export function limitsOf(
  practice: Practice,
  layingOut: LayingOut,
  rateM3h: number | undefined,
): Limits {
  const figure = (id: FigureId) => cmOf(practice.figures[id].value);
  const { leastCm, mostCm } = stickUp(layingOut, practice);
  return {
    underDryCm: figure('screenUnderDryLevelM'),
    underPumpingCm: figure('screenUnderPumpingLevelM'),
    sumpLeastCm: figure('sumpLeastM'),
    sumpMostCm: figure('sumpMostM'),
    packCm: figure('packAboveScreenM'),
    clayCm: figure('clayOnPackM'),
    clayUnderGroutCm: figure('clayOnPackGraveM'),
    partingClayCm: figure('clayOnPackGraveM'),
    sanitaryCm: figure('sanitarySealToM'),
    stickUpLeastCm: leastCm,
    stickUpMostCm: mostCm,
    aquitardCm: figure('aquitardM'),
    tightShare: practice.figures.screenInTightShare.value,
    screenLeastCm,
    openAreaCm2: rateM3h === undefined ? 0 : openAreaFor(rateM3h, practice),
  };
}

/**
 * The limits below which a breach is grave. The pumping level and the entrance velocity have none:
 * a well that falls short there still gives water.
 */
export function graveLimitsOf(limits: Limits, practice: Practice): Limits {
  return {
    ...limits,
    packCm: cmOf(practice.figures.packAboveScreenGraveM.value),
    clayCm: cmOf(practice.figures.clayOnPackGraveM.value),
    tightShare: practice.figures.screenInTightGraveShare.value,
    underPumpingCm: -Infinity,
    openAreaCm2: 0,
  };
}
