import type { MethodResult, TestAnalysis, TestReading } from '../../../core/hydraulics/results.ts';
import type { Place } from '../plot/plot.ts';

/** Where the readings of a test stand on the axis of its straight line: minutes, or t/t′. */
export function onTimeAxis(
  analysis: TestAnalysis,
  reading: Pick<TestReading, 'minutes' | 'timeRatio'>,
): number | undefined {
  return analysis.kind === 'recovery' ? reading.timeRatio : reading.minutes;
}

/** Readings that have a place on that axis. */
export function placesOf(analysis: TestAnalysis): Place[] {
  return analysis.readings.flatMap((reading): Place[] => {
    const x = onTimeAxis(analysis, reading);
    return x === undefined ? [] : [[x, reading.drawdownM]];
  });
}

/** The result whose straight line the test is read by. */
export function lineOf({ results }: TestAnalysis): MethodResult | undefined {
  return results.find(({ method }) => method === 'cooperJacob' || method === 'theisRecovery');
}

/** Minutes of readings on the axis of a plot, rising along it. */
export function stopsOf(
  analysis: TestAnalysis,
): { readonly x: number; readonly minutes: number }[] {
  return analysis.readings
    .flatMap((reading) => {
      const x = onTimeAxis(analysis, reading);
      return x === undefined ? [] : [{ x, minutes: reading.minutes }];
    })
    .toSorted((a, b) => a.x - b.x);
}
