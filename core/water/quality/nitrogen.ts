import type { GuidelineSet, HeldParameter } from '../guidelines/guidelineSet.ts';
import { exactly, fromRecord, reckoned, scaled, sumOf } from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { NitrogenRatio, Reading } from '../results.ts';
import { sources } from '../sources.ts';
import { conversion } from '../units/convert.ts';
import { rangeOf, type SampleReadings } from './ofSample.ts';

/** As when one value is compared: figures are printed rounded. */
const roundingShare = 0.001;

/** The health value of a parameter, in the parameter's own unit and form. */
function healthValue(parameter: HeldParameter | undefined): number | undefined {
  const held = parameter?.values.find(({ basis, bound }) => basis === 'health' && bound === 'most');
  if (!parameter || !held) return undefined;
  const way = conversion(parameter.id, held, parameter);
  return way.ok && held.value > 0 ? held.value * way.factor : undefined;
}

function stateOf({ least, most }: Interval, readings: readonly Reading[]): NitrogenRatio['state'] {
  const limit = 1 + roundingShare;
  if (most <= limit) return 'within';
  if (least > limit) return 'above';
  return readings.some(({ possible }) => possible.length > 1) ? 'formUnknown' : 'limitTooHigh';
}

/**
 * Nitrate and nitrite do the same harm, so that their shares add up: NO3/50 + NO2/3 ≤ 1 by WHO, or
 * with the set's own values. Of the last sample that has both.
 */
export function nitrogenRatio(
  samples: readonly SampleReadings[],
  { parameters }: GuidelineSet,
): NitrogenRatio | undefined {
  const limitOf = (id: string) => healthValue(parameters.find((one) => one.id === id));
  const [mostNitrate, mostNitrite] = [limitOf('nitrate'), limitOf('nitrite')];
  if (mostNitrate === undefined || mostNitrite === undefined) return undefined;
  for (const { sample, readings } of samples) {
    const [nitrate, nitrite] = [readings.get('nitrate'), readings.get('nitrite')];
    if (!nitrate || !nitrite) continue;
    const [no3, no2] = [rangeOf(nitrate), rangeOf(nitrite)];
    const value = sumOf([scaled(no3, 1 / mostNitrate), scaled(no2, 1 / mostNitrite)]);
    const inputs = [
      fromRecord('NO3', no3, 'mg/l', nitrate.path),
      fromRecord('NO2', no2, 'mg/l', nitrite.path),
      { symbol: 'GNO3', value: exactly(mostNitrate), unit: 'mg/l', from: 'guideline' } as const,
      { symbol: 'GNO2', value: exactly(mostNitrite), unit: 'mg/l', from: 'guideline' } as const,
    ];
    return {
      sample,
      ratio: reckoned(
        'nitrogenRatio',
        value,
        'r = NO3 / GNO3 + NO2 / GNO2',
        inputs,
        sources.whoRatio,
      ),
      state: stateOf(value, [nitrate, nitrite]),
    };
  }
  return undefined;
}
