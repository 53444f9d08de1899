import type { LogInterval } from '../log.ts';
import type { WellRecord } from '../schema.ts';
import type { Trouble } from '../trouble.ts';
import type { PumpingTest } from '../water.ts';
import { notLess } from './figure.ts';

type Readings = NonNullable<PumpingTest['series']>;
type Curve = NonNullable<LogInterval['sieve']>;

/** Readings stand in order of time within a step, and steps in their order. */
function checkReadings(path: string, series: Readings): Trouble[] {
  return series.slice(1).flatMap((reading, row) => {
    const before = series[row]!;
    const key = reading.step === before.step ? 'minutes' : 'step';
    return notLess(
      { path: `${path}[${row + 1}].${key}`, value: reading[key] },
      { path: `${path}[${row}].${key}`, value: before[key] },
      'lessThan',
    );
  });
}

/** A wider sieve lets as much pass as a finer one, or more; either order of rows will do. */
function checkCurve(path: string, curve: Curve): Trouble[] {
  const rows = curve.map((point, at) => ({ ...point, at })).sort((a, b) => a.size - b.size);
  return rows
    .slice(1)
    .flatMap((wider, one) =>
      notLess(
        { path: `${path}[${wider.at}].finer`, value: wider.finer },
        { path: `${path}[${rows[one]!.at}].finer`, value: rows[one]!.finer },
        'lessThan',
      ),
    );
}

/** Rows of readings and sieves out of order. */
export function checkSeries({ tests, log }: WellRecord): Trouble[] {
  return [
    ...(tests ?? []).flatMap(({ series }, at) =>
      checkReadings(`tests[${at}].series`, series ?? []),
    ),
    ...(log ?? []).flatMap(({ sieve }, at) => checkCurve(`log[${at}].sieve`, sieve ?? [])),
  ];
}
