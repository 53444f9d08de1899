import type { WellModel } from '../model/wellModel.ts';
import { designRateM3h, lowestRestM } from '../practice/reading/water.ts';
import type { LayingOut, SitePipe } from '../record/layingOut.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Missing } from './proposal.ts';

/** A hole said to be deeper is a slip of the pen, and its depth is asked for again. Metres. */
const deepestM = 1000;

function ofWell(record: WellRecord, model: WellModel): Missing[] {
  const lacks: Missing[] = [];
  if (model.strata.length === 0) lacks.push({ what: 'log', path: 'log', stops: true });
  if ((model.bore.depthM ?? Infinity) > deepestM)
    lacks.push({ what: 'boreDepth', path: 'bore.depthReached', stops: true });
  if (model.bore.sections.length === 0)
    lacks.push({ what: 'boreDiameter', path: 'bore.sections', stops: false });
  if (!Number.isFinite(lowestRestM(record, model)))
    lacks.push({ what: 'restLevel', path: 'layingOut.drySeasonLevel', stops: true });
  return lacks;
}

function ofPipe({ kind, length, outside, insertion, openArea }: SitePipe, at: number): Missing[] {
  const path = `layingOut.pipes[${at}]`;
  const lacks: Missing[] = [];
  if (!length) lacks.push({ what: 'pipeLength', path: `${path}.length`, stops: false });
  if (!outside) lacks.push({ what: 'pipeDiameter', path: `${path}.outside`, stops: false });
  if (insertion === undefined)
    lacks.push({ what: 'insertion', path: `${path}.insertion`, stops: false });
  if (kind === 'screen' && !openArea)
    lacks.push({ what: 'openArea', path: `${path}.openArea`, stops: false });
  return lacks;
}

function ofPipes({ pipes = [] }: LayingOut): Missing[] {
  const has = (kind: SitePipe['kind']) =>
    pipes.some((pipe) => pipe.kind === kind && pipe.count !== 0 && (pipe.length ?? 0) > 0);
  const path = 'layingOut.pipes';
  return [
    ...(has('plain') ? [] : [{ what: 'plainPipes', path, stops: true } as const]),
    ...(has('screen') ? [] : [{ what: 'screenPipes', path, stops: true } as const]),
    ...pipes.flatMap(ofPipe),
  ];
}

function ofPumping(record: WellRecord): Missing[] {
  const lacks: Missing[] = [];
  if (!designRateM3h(record))
    lacks.push({ what: 'designRate', path: 'layingOut.rate', stops: false });
  if (record.layingOut?.drawdown === undefined)
    lacks.push({ what: 'drawdown', path: 'layingOut.drawdown', stops: false });
  return lacks;
}

/** What laying out lacks in a record: what stops it, and what it does without. */
export function missingInputsOf(record: WellRecord, model: WellModel): Missing[] {
  return [...ofWell(record, model), ...ofPipes(record.layingOut ?? {}), ...ofPumping(record)];
}
