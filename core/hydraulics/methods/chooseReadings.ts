import {
  chooseStraightPart,
  lastPart,
  stretchOf,
  type AxisReadings,
  type Stretch,
} from '../fit/straightPart.ts';
import { limits } from '../limits.ts';
import type { Check, M3PerDay, Said, TestReading, UsedReadings } from '../results.ts';
import type { AssumptionCode } from '../codes.ts';
import type { Setting } from '../setting.ts';
import { casingStorageMinutes, transmissivityM2d, uAt } from '../transmissivity.ts';
import { assumed, check } from './said.ts';

/** Readings on the axis of a straight-line method, all of one length. */
export interface OnAxis extends AxisReadings {
  readonly readings: readonly TestReading[];
  /** Rate that the slope belongs to. */
  readonly rateM3d: M3PerDay;
}

export interface Chosen {
  readonly stretch: Stretch;
  readonly how: UsedReadings['chosen'];
}

/** Readings of the window that a person chose; undefined where no line goes through them. */
function byHand(on: OnAxis, { fromMin, toMin }: NonNullable<Setting['window']>) {
  const inside = ({ minutes }: TestReading) => minutes >= fromMin && minutes <= toMin;
  const first = on.readings.findIndex(inside);
  const last = on.readings.findLastIndex(inside);
  return last - first < 1 || first < 0 ? undefined : stretchOf(on, first, last);
}

/**
 * The largest u at the first reading of a stretch. In an observation well by the line's own
 * storage: u = 2.2458 t₀ / 4 t, with t₀ where the line has no drawdown. In the pumped well, whose
 * line tells no storage, by the largest that an aquifer is taken to have.
 */
export function uOfStretch(on: OnAxis, { line }: Stretch, setting: Setting, at: number) {
  const minutes = on.readings[at]!.minutes;
  if (setting.distanceM !== undefined)
    return (2.2458 / 4) * (10 ** (-line.at0 / line.slope) / minutes);
  const T = transmissivityM2d(on.rateM3d, line.slope);
  return setting.holeRadiusM === undefined
    ? undefined
    : uAt(setting.holeRadiusM, limits.largestStorage, T, minutes);
}

function storageMinutes(on: OnAxis, { line }: Stretch, { distanceM, casingRadiusM }: Setting) {
  if (distanceM !== undefined || casingRadiusM === undefined) return undefined;
  return casingStorageMinutes(casingRadiusM, transmissivityM2d(on.rateM3d, line.slope));
}

/**
 * The readings that a straight line is drawn through: those of the hand's window, else the
 * straight part as it is chosen, else the last of them, which a check then says not to be straight.
 */
export function chooseReadings(on: OnAxis, setting: Setting): Chosen | undefined {
  if (setting.window) {
    const stretch = byHand(on, setting.window);
    return stretch && { stretch, how: 'byHand' };
  }
  const found = chooseStraightPart(on, (stretch) => {
    const first = on.readings[stretch.first]!.minutes;
    const u = uOfStretch(on, stretch, setting, stretch.first) ?? 0;
    return u <= limits.u && first >= (storageMinutes(on, stretch, setting) ?? 0);
  });
  if (found) return { stretch: found, how: 'automatic' };
  const last = lastPart(on);
  return last && last.line.slope > 0 ? { stretch: last, how: 'last' } : undefined;
}

/** Whether the stretch meets what the method asks for. */
export function checksOf(on: OnAxis, stretch: Stretch, setting: Setting): Check[] {
  const first = on.readings[stretch.first]!.minutes;
  const uFirst = uOfStretch(on, stretch, setting, stretch.first);
  const uLast = uOfStretch(on, stretch, setting, stretch.last);
  const minutes = storageMinutes(on, stretch, setting);
  const { slopeChange: change, cycles, straight } = stretch;
  return [
    ...(uFirst === undefined || uLast === undefined
      ? []
      : [check('uSmall', uFirst <= limits.u, { first: uFirst, last: uLast, limit: limits.u })]),
    ...(minutes === undefined
      ? []
      : [check('afterCasingStorage', first >= minutes, { first, minutes })]),
    check('straight', straight, { change: 100 * change, limit: 100 * limits.slopeChange }),
    check('longEnough', cycles >= limits.cycles, { cycles, limit: limits.cycles }),
  ];
}

/** What lines through the readings of a pumped well take for granted. */
export function lineAssumptions(
  { how }: Chosen,
  { distanceM, casingRadiusM, holeRadiusM }: Setting,
): Said<AssumptionCode>[] {
  const pumped = distanceM === undefined;
  return [
    assumed('idealAquifer'),
    assumed('independentResiduals'),
    assumed(how === 'byHand' ? 'handWindow' : 'automaticWindow'),
    ...(pumped && holeRadiusM !== undefined
      ? [assumed('uByLargestStorage', { storage: limits.largestStorage, radius: holeRadiusM })]
      : []),
    ...(pumped && casingRadiusM !== undefined
      ? [assumed('riserIgnored', { radius: casingRadiusM })]
      : []),
    ...(pumped && casingRadiusM === undefined ? [assumed('casingUnknown')] : []),
  ];
}

export function usedOf({ readings }: OnAxis, { stretch, how }: Chosen): UsedReadings {
  return {
    fromMin: readings[stretch.first]!.minutes,
    toMin: readings[stretch.last]!.minutes,
    count: stretch.last - stretch.first + 1,
    chosen: how,
  };
}
