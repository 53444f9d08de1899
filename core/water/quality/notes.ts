import { dayOf, minutesBetween } from '../../record/moment.ts';
import type { WaterSample } from '../../record/quality.ts';
import type { ParameterId } from '../guidelines/guidelineSet.ts';
import type { Interval } from '../interval.ts';
import type { QualityNote } from '../results.ts';
import { holdingTimes, measuredInField, type Holding } from './holding.ts';
import type { ReadParameter } from './readReadings.ts';

const minutesPerHour = 60;
const hoursPerDay = 24;
const msPerDay = hoursPerDay * minutesPerHour * 60_000;

/** Hours between two moments; of days alone, between the least and the most that it may be. */
function hoursBetween(from: string, to: string): Interval {
  const minutes = minutesBetween(from, to);
  if (minutes !== undefined)
    return { least: minutes / minutesPerHour, most: minutes / minutesPerHour };
  const days = Math.round((Date.parse(dayOf(to)) - Date.parse(dayOf(from))) / msPerDay);
  return { least: (days - 1) * hoursPerDay, most: (days + 1) * hoursPerDay };
}

type Said = Pick<QualityNote, 'code' | 'values'>;

function ageNote(hours: Interval, { goodH, mostH }: Holding): Said | undefined {
  if (hours.least > mostH)
    return { code: 'sample.late', values: { hours: hours.least, mostHours: mostH } };
  if (hours.most > mostH) return { code: 'sample.ageUnknown', values: { mostHours: mostH } };
  if (goodH === undefined || hours.least <= goodH) return undefined;
  return { code: 'sample.aging', values: { hours: hours.least, goodHours: goodH } };
}

/** Parameters of a sample that a laboratory measured, or nobody said where. */
function bottled({ results = [] }: WaterSample, read: readonly ReadParameter[]): ParameterId[] {
  const rows = read.filter(({ reading }) => {
    const row = Number(/results\[(\d+)\]/.exec(reading.path)?.[1]);
    return results[row]?.where !== 'field';
  });
  return [...new Set(rows.map(({ parameter }) => parameter.id))];
}

function agesOf(
  { takenAt, receivedAt }: WaterSample,
  path: string,
  parameters: readonly ParameterId[],
): QualityNote[] {
  if (takenAt === undefined || receivedAt === undefined) return [];
  const hours = hoursBetween(takenAt, receivedAt);
  const at = `${path}.receivedAt`;
  if (hours.most < 0) return [{ code: 'sample.receivedBefore', path: at, values: {} }];
  return parameters.flatMap((parameter) => {
    const holding = holdingTimes[parameter];
    const note = holding && ageNote(hours, holding);
    return note ? [{ ...note, path: at, parameter }] : [];
  });
}

function inLaboratory(
  { results = [] }: WaterSample,
  read: readonly ReadParameter[],
): QualityNote[] {
  return read.flatMap(({ parameter: { id }, reading: { path } }) => {
    const row = Number(/results\[(\d+)\]/.exec(path)?.[1]);
    if (!measuredInField.includes(id) || results[row]?.where !== 'laboratory') return [];
    return [{ code: 'sample.measuredInLaboratory', path, parameter: id, values: {} } as const];
  });
}

/**
 * What is worth knowing of the samples: no day, a bottle that waited long before the laboratory
 * had it, a measurement that belongs beside the well. When it was analysed is not recorded.
 */
export function notesOf(
  samples: readonly WaterSample[],
  read: readonly ReadParameter[],
): QualityNote[] {
  return samples.flatMap((sample, at) => {
    const path = `quality[${at}]`;
    const ofSample = read.filter(({ reading }) => reading.sample === at);
    if (ofSample.length === 0) return [];
    const undated: QualityNote[] =
      sample.takenAt === undefined
        ? [{ code: 'sample.undated', path: `${path}.takenAt`, values: {} }]
        : [];
    return [
      ...undated,
      ...agesOf(sample, path, bottled(sample, ofSample)),
      ...inLaboratory(sample, ofSample),
    ];
  });
}
