import { known } from '../../base/known.ts';
import type { WaterSample } from '../../record/quality.ts';
import type { GuidelineSet, HeldParameter } from '../guidelines/guidelineSet.ts';
import type { Reading, UnknownResult } from '../results.ts';
import { conversion, openForms, type Conversion } from '../units/convert.ts';
import { readForm } from '../units/readForm.ts';
import type { ConversionCode } from './conversionCodes.ts';
import { formInName, parameterOf } from './parameterOf.ts';

type Result = NonNullable<WaterSample['results']>[number];

export interface ReadParameter {
  readonly parameter: HeldParameter;
  readonly reading: Reading;
}

export interface ReadSamples {
  readonly read: readonly ReadParameter[];
  readonly unknown: readonly UnknownResult[];
}

/**
 * Every way in which a figure may be converted: one, or one for each form that it may be in. What
 * stands as form and is none, as in `total`, tells nothing.
 */
function conversionsOf(result: Result, parameter: HeldParameter): Conversion[] {
  const { unit } = result;
  const written = result.as === undefined ? undefined : readForm(result.as);
  const as = written ?? formInName(result.parameter, parameter.id);
  const one = conversion(parameter.id, { unit, as }, parameter);
  if (one.ok) return [one];
  if (one.why === 'unit' || as !== undefined) return [];
  return openForms(parameter.id)
    .map((form) => conversion(parameter.id, { unit, as: form }, parameter))
    .filter((converted) => converted.ok);
}

function codesOf(ways: readonly Conversion[]): ConversionCode[] {
  const [first] = ways;
  if (!first) return [];
  if (ways.length > 1) return ['formUnwritten'];
  return [
    ...(first.form ? (['form'] as const) : []),
    ...(first.factor !== 1 && !first.form ? (['unit'] as const) : []),
    ...(first.from.taken ? [first.from.taken] : []),
  ];
}

function readingOf(
  result: Result,
  value: number | undefined,
  parameter: HeldParameter,
  place: Pick<Reading, 'path' | 'sample' | 'at'>,
): Reading {
  const ways = value === undefined ? [] : conversionsOf(result, parameter);
  const possible = [...new Set(ways.map(({ factor }) => (value ?? 0) * factor))];
  return {
    ...place,
    written: { parameter: result.parameter, ...known({ value, unit: result.unit, as: result.as }) },
    below: result.below === true,
    ...known({ value: possible.length === 1 ? possible[0] : undefined }),
    possible,
    conversions: value === undefined ? ['limitUnwritten'] : codesOf(ways),
  };
}

/**
 * Results of all samples by the parameters of a set. One without a figure tells nothing, unless it
 * says that it lay below detection.
 */
export function readSamples(samples: readonly WaterSample[], set: GuidelineSet): ReadSamples {
  const read: ReadParameter[] = [];
  const unknown: UnknownResult[] = [];
  samples.forEach(({ takenAt, results = [] }, sample) => {
    results.forEach((result, row) => {
      const path = `quality[${sample}].results[${row}]`;
      const parameter = parameterOf(result.parameter, set.parameters);
      if (!parameter) unknown.push({ path, written: result.parameter });
      else if (result.value !== undefined || result.below) {
        const place = { path, sample, ...known({ at: takenAt }) };
        read.push({ parameter, reading: readingOf(result, result.value, parameter, place) });
      }
    });
  });
  return { read, unknown };
}

/** In order of time, those without a day first; of one time, in the record's order. */
export function inOrder(readings: readonly Reading[]): Reading[] {
  const time = ({ at }: Reading) => (at === undefined ? -Infinity : Date.parse(at));
  return readings
    .map((reading) => ({ reading, time: time(reading) }))
    .sort((a, b) => (a.time === b.time ? a.reading.sample - b.reading.sample : a.time - b.time))
    .map(({ reading }) => reading);
}
