import type { WellRecord } from '../schema.ts';
import { troubleAt, type Trouble } from '../trouble.ts';
import { figure, notLess } from './figure.ts';

interface Range {
  readonly from: number;
  readonly to: number;
}

/** A range whose foot is not below its top. */
function checkRange(path: string, { from, to }: Range): Trouble[] {
  const foot = { path: `${path}.to`, value: to };
  if (from === to)
    return [troubleAt(foot.path, `${figure(to)} is also ${path}.from; write where it ends`)];
  return notLess(foot, { path: `${path}.from`, value: from }, 'above');
}

function checkRanges(path: string, ranges: readonly Range[] = []): Trouble[] {
  return ranges.flatMap((range, at) => checkRange(`${path}[${at}]`, range));
}

/** Depths that stand the wrong way round. */
export function checkDepths({ log, bore, annulus, strikes, pump }: WellRecord): Trouble[] {
  return [
    ...checkRanges('log', log),
    ...checkRanges('bore.sections', bore?.sections),
    ...checkRanges('annulus', annulus),
    ...notLess(
      { path: 'bore.depthReached', value: bore?.depthReached },
      { path: 'bore.depthFound', value: bore?.depthFound },
      'above',
    ),
    ...(strikes ?? []).flatMap(({ depth, rise }, at) =>
      notLess(
        { path: `strikes[${at}].depth`, value: depth },
        { path: `strikes[${at}].rise`, value: rise },
        'above',
      ),
    ),
    ...notLess(
      { path: 'pump.intake', value: pump?.intake },
      { path: 'pump.cylinderTop', value: pump?.cylinderTop },
      'above',
    ),
  ];
}
