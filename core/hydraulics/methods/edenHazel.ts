import { fitColumns, halfWidth, only, type LinearFit } from '../fit/leastSquares.ts';
import { impulsesOf, superposedLog } from '../ratesOverTime.ts';
import type { AssumptionCode } from '../codes.ts';
import type { M2PerDay, MethodResult, Said, TestReading } from '../results.ts';
import type { Drawdowns, Setting } from '../setting.ts';
import {
  around,
  casingStorageMinutes,
  transmissivityInterval,
  transmissivityM2d,
} from '../transmissivity.ts';
import { assumed, check } from './said.ts';

/** s = A Σ ΔQ log₁₀(t − tᵢ) + B Q + C Q², fitted to all steps at once. */
export interface StepsFit {
  readonly used: readonly TestReading[];
  readonly fit: LinearFit;
  /** A: slope over a log cycle of minutes for each m³/d. */
  readonly slopePerRate: number;
  /** B at 1 min and C. */
  readonly aquiferLoss: number;
  readonly wellLoss: number;
  readonly transmissivityM2d: M2PerDay;
}

/** Fewest readings in each of two steps beside the three unknowns. */
const leastReadings = 6;

function fitOnce(data: Drawdowns, used: readonly TestReading[]): StepsFit | undefined {
  const steps = new Set(used.map(({ step }) => step?.number));
  if (used.length < leastReadings || steps.size < 2) return undefined;
  const impulses = impulsesOf(data.rates);
  const fit = fitColumns(
    [
      used.map(({ minutes }) => superposedLog(impulses, minutes)),
      used.map(({ rateM3d }) => rateM3d!),
      used.map(({ rateM3d }) => rateM3d! ** 2),
    ],
    used.map(({ drawdownM }) => drawdownM),
  );
  const [slopePerRate, aquiferLoss, wellLoss] = fit?.coefficients ?? [];
  if (!fit || !(slopePerRate! > 0)) return undefined;
  return {
    used,
    fit,
    slopePerRate: slopePerRate!,
    aquiferLoss: aquiferLoss!,
    wellLoss: wellLoss!,
    transmissivityM2d: transmissivityM2d(1, slopePerRate!),
  };
}

/** After each change of rate the casing gives or takes water first; those readings are masked. */
function masked(data: Drawdowns, { casingRadiusM }: Setting, T: M2PerDay): TestReading[] {
  const minutes = casingRadiusM === undefined ? 0 : casingStorageMinutes(casingRadiusM, T);
  return data.readings.filter(({ step }) => step !== undefined && step.minutes >= minutes);
}

/** All steps at once; undefined where they have too few readings. */
export function fitSteps(data: Drawdowns, setting: Setting): StepsFit | undefined {
  const stepped = data.readings.filter(({ step, rateM3d = 0 }) => step && rateM3d > 0);
  let found = fitOnce(data, stepped);
  for (let round = 0; found && round < 4; round++) {
    const next = fitOnce(data, masked(data, setting, found.transmissivityM2d));
    if (!next) break;
    const settled = next.used.length === found.used.length;
    found = next;
    if (settled) break;
  }
  return found;
}

/**
 * T, B and C of a step test from all its readings, rates superposed. B is that at 1 min. Source:
 * Eden and Hazel 1973.
 */
export function edenHazel(
  { used, fit, slopePerRate, aquiferLoss, wellLoss }: StepsFit,
  setting: Setting,
  also: readonly Said<AssumptionCode>[],
): MethodResult {
  const half = (which: number) => halfWidth(fit, only(which, 3));
  const { casingRadiusM } = setting;
  const fitted = used.map(({ drawdownM }, at) => drawdownM - fit.residuals[at]!);
  return {
    method: 'edenHazel',
    estimates: [
      {
        id: 'transmissivity',
        value: transmissivityM2d(1, slopePerRate),
        unit: 'm²/d',
        ...transmissivityInterval(1, slopePerRate, half(0)),
      },
      { id: 'aquiferLoss', value: aquiferLoss, unit: 'd/m²', ...around(aquiferLoss, half(1)) },
      { id: 'wellLoss', value: wellLoss, unit: 'd²/m⁵', ...around(wellLoss, half(2)) },
    ],
    used: {
      fromMin: used[0]!.minutes,
      toMin: used.at(-1)!.minutes,
      count: used.length,
      chosen: 'automatic',
    },
    points: used.map(({ minutes, drawdownM }, at) => ({
      minutes,
      x: Math.log10(minutes),
      read: drawdownM,
      fitted: fitted[at]!,
    })),
    rmsM: Math.sqrt(fit.sumOfSquares / used.length),
    checks: [check('lossPositive', wellLoss >= 0, { value: wellLoss })],
    source: 'edenHazel1973',
    assumptions: [
      assumed('idealAquifer'),
      assumed('independentResiduals'),
      ...(casingRadiusM === undefined
        ? [assumed('casingUnknown')]
        : [assumed('riserIgnored', { radius: casingRadiusM })]),
      ...also,
    ],
  };
}
