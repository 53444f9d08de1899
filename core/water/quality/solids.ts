import { fromAssumption, fromRecord, reckoned } from '../reckon.ts';
import { assumptions } from '../assumptions.ts';
import type { HeldParameter } from '../guidelines/guidelineSet.ts';
import type { QualityResult } from '../results.ts';
import { sources } from '../sources.ts';
import { conversion } from '../units/convert.ts';
import { bandAt } from './bands.ts';
import { rangeOf, type SampleReadings } from './ofSample.ts';

/**
 * Dissolved solids from electrical conductivity, between the least and the greatest customary
 * factor, of the last sample that has it; absent where that sample's solids were measured. Reads
 * conductivity in the unit of its parameter.
 */
export function solidsOf(
  samples: readonly SampleReadings[],
  parameterOf: (id: string) => HeldParameter | undefined,
): QualityResult['solids'] {
  const last = samples.find(({ readings }) => readings.has('conductivity'));
  const reading = last?.readings.get('conductivity');
  const unit = parameterOf('conductivity')?.unit;
  if (!last || !reading || last.readings.has('dissolvedSolids')) return undefined;
  const way = conversion('conductivity', { unit }, { unit: 'µS/cm' });
  if (!way.ok) return undefined;
  const range = rangeOf(reading);
  const ec = { least: range.least * way.factor, most: range.most * way.factor };
  const factor = assumptions.solidsFactor.value;
  const middleMgL = ec.most * assumptions.solidsFactorMiddle.value.most;
  const bands = parameterOf('dissolvedSolids')?.bands?.list ?? [];
  const band = reading.below ? undefined : bandAt(bands, middleMgL);
  return {
    sample: last.sample,
    mgL: reckoned(
      'dissolvedSolidsMgL',
      { least: ec.least * factor.least, most: ec.most * factor.most },
      'S = f · EC',
      [fromAssumption('f', 'solidsFactor'), fromRecord('EC', ec, 'µS/cm', reading.path)],
      sources.hydrochemistry,
    ),
    middleMgL,
    ...(band === undefined ? {} : { band }),
  };
}
