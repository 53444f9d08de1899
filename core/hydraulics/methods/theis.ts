import { fitTheis, type TheisFit } from '../fit/theisFit.ts';
import { limits } from '../limits.ts';
import type { AssumptionCode } from '../codes.ts';
import type {
  Check,
  Estimate,
  M2PerDay,
  MethodResult,
  Minutes,
  Said,
  TestReading,
} from '../results.ts';
import type { Drawdowns, Setting } from '../setting.ts';
import { intervalLevel } from '../special/studentT.ts';
import { casingStorageMinutes, uAt } from '../transmissivity.ts';
import { assumed, check } from './said.ts';

function estimate(
  id: Estimate['id'],
  value: number,
  unit: string,
  lnHalf: number | undefined,
): Estimate {
  if (lnHalf === undefined) return { id, value, unit };
  const [lowest, highest] = [value * Math.exp(-lnHalf), value * Math.exp(lnHalf)];
  return {
    id,
    value,
    unit,
    interval: { lowest, highest, level: intervalLevel, basis: 'linearised' },
  };
}

/** Readings inside the hand's window, else those after the casing gave its water. */
function chosen(readings: readonly TestReading[], from: Minutes, { window }: Setting) {
  if (!window) return readings.filter(({ minutes }) => minutes >= from);
  const { fromMin, toMin } = window;
  return readings.filter(({ minutes }) => minutes >= fromMin && minutes <= toMin);
}

/** Casing storage masks by the fit's own T: fit, mask, and fit again until no reading changes. */
function fitAfterStorage(data: Drawdowns, setting: Setting, firstT: M2PerDay | undefined) {
  const { distanceM, casingRadiusM } = setting;
  const pumped = distanceM === undefined && casingRadiusM !== undefined;
  const storageMin = (T: M2PerDay | undefined) =>
    pumped && T !== undefined ? casingStorageMinutes(casingRadiusM, T) : 0;
  let used = chosen(data.readings, storageMin(firstT), setting);
  let fit: TheisFit | undefined;
  for (let round = 0; round < 4; round++) {
    if (used.length < limits.curveReadings) return undefined;
    const timed = used.map((one) => ({ ...one, distanceM: distanceM ?? 1 }));
    fit = fitTheis(timed, data.rates);
    if (!fit) return undefined;
    const next = chosen(data.readings, storageMin(fit.transmissivityM2d), setting);
    if (next.length === used.length) break;
    used = next;
  }
  return fit && { fit, used };
}

function checksOf(fit: TheisFit, used: readonly TestReading[], setting: Setting): Check[] {
  const { distanceM, casingRadiusM } = setting;
  if (distanceM !== undefined || casingRadiusM === undefined) return [];
  const first = used[0]!.minutes;
  const minutes = casingStorageMinutes(casingRadiusM, fit.transmissivityM2d);
  return [check('afterCasingStorage', first >= minutes, { first, minutes })];
}

/** u at the first and last reading: no limit to the fit, but it tells how much of the bend was seen. */
function bendSeen(fit: TheisFit, used: readonly TestReading[], distanceM: number): Check {
  const at = ({ minutes }: TestReading) =>
    uAt(distanceM, fit.storage, fit.transmissivityM2d, minutes);
  const [first, last] = [at(used[0]!), at(used.at(-1)!)];
  return check('bendSeen', first > limits.u, { first, last, limit: limits.u });
}

function assumptionsOf({ distanceM, casingRadiusM, window }: Setting, masked: boolean) {
  const pumped = distanceM === undefined;
  return [
    assumed('idealAquifer'),
    assumed('independentResiduals'),
    ...(window ? [assumed('handWindow')] : []),
    ...(pumped ? [assumed('storageNotReported'), assumed('wellLossInStorage')] : []),
    ...(masked ? [assumed('riserIgnored', { radius: casingRadiusM! })] : []),
    ...(pumped && casingRadiusM === undefined ? [assumed('casingUnknown')] : []),
  ];
}

/**
 * Theis by non-linear least squares, with changing rates and late starts superposed. In the pumped
 * well the storage that comes out holds the well's loss and is not reported.
 */
export function theis(
  data: Drawdowns,
  setting: Setting,
  firstT: M2PerDay | undefined,
  also: readonly Said<AssumptionCode>[] = [],
): MethodResult | undefined {
  const found = fitAfterStorage(data, setting, firstT);
  if (!found) return undefined;
  const { fit, used } = found;
  const { distanceM } = setting;
  const masked = used.length < data.readings.length && !setting.window;
  const termD = fit.storageTerm * (distanceM ?? 1) ** 2;
  return {
    method: 'theis',
    estimates: [
      estimate('transmissivity', fit.transmissivityM2d, 'm²/d', fit.lnTHalf),
      ...(distanceM === undefined ? [] : [estimate('storage', fit.storage, '1', fit.lnSHalf)]),
    ],
    used: {
      fromMin: used[0]!.minutes,
      toMin: used.at(-1)!.minutes,
      count: used.length,
      chosen: setting.window ? 'byHand' : masked ? 'automatic' : 'all',
    },
    points: used.map(({ minutes, drawdownM }, at) => ({
      minutes,
      x: Math.log10(minutes),
      read: drawdownM,
      fitted: fit.fittedM[at]!,
    })),
    rmsM: fit.rmsM,
    curve: { transmissivityM2d: fit.transmissivityM2d, termD },
    checks: [
      ...checksOf(fit, used, setting),
      ...(distanceM === undefined ? [] : [bendSeen(fit, used, distanceM)]),
    ],
    source: 'theis1935',
    assumptions: [...assumptionsOf(setting, masked), ...also],
  };
}
