import type { WellRecord } from '../schema.ts';
import type { Trouble } from '../trouble.ts';
import { notLess } from './figure.ts';

interface Range {
  readonly from: number;
  readonly to: number;
}

function checkRange(path: string, { from, to }: Range): Trouble[] {
  return notLess({ path: `${path}.to`, value: to }, { path: `${path}.from`, value: from }, 'above');
}

function checkList(path: string, ranges: readonly Range[] = []): Trouble[] {
  return ranges.flatMap((range, at) => checkRange(`${path}[${at}]`, range));
}

/** Ranges of depth whose foot is above their top: `log[3].to: 7.5 is above log[3].from 8.0`. */
export function checkRanges({ samples, log, bore, annulus }: WellRecord): Trouble[] {
  return [
    ...checkList('samples', samples),
    ...checkList('log', log),
    ...checkList('bore.sections', bore?.sections),
    ...checkList('annulus', annulus),
  ];
}
