import { known } from '../../../base/known.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, Millimetres } from '../../../base/units.ts';
import { nestStrings } from '../../../model/column.ts';
import { latestRest } from '../../../model/levels.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { PumpKind } from '../../../record/headworks.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { closedState } from './stages.ts';

/** The few figures of a well that its users ask for. What is absent is not known. */
export interface WellFacts {
  readonly depth?: {
    readonly m: DepthM;
    readonly of: 'well' | 'hole';
    readonly source: RecordPath;
  };
  readonly rest?: { readonly m: DepthM; readonly at?: string; readonly source: RecordPath };
  readonly intakeM?: DepthM;
  readonly kind?: PumpKind;
  readonly pipe?: {
    readonly outsideMm: Millimetres;
    readonly insideMm?: Millimetres;
    readonly source: RecordPath;
  };
}

/** The foot of the deepest pipes; of a hole that was given up or has no pipes, its own. */
function depthOf(record: WellRecord, model: WellModel): WellFacts['depth'] {
  const feet = closedState(record) === undefined ? model.strings : [];
  const deepest = [...feet].sort((a, b) => b.bottomM - a.bottomM)[0];
  if (deepest) return { m: deepest.bottomM, of: 'well', source: deepest.path };
  const { depthM, sections } = model.bore;
  if (depthM === undefined) return undefined;
  return { m: depthM, of: 'hole', source: sections.at(-1)?.path ?? 'bore.depthReached' };
}

/** The pipe that the pump hangs in, by its uppermost piece of known size. */
function pipeOf({ strings }: WellModel): WellFacts['pipe'] {
  const pieces = [...(nestStrings(strings).at(-1)?.pieces ?? [])];
  const sized = pieces.sort((a, b) => a.topM - b.topM).find((one) => one.outsideMm !== undefined);
  if (sized?.outsideMm === undefined) return undefined;
  const { outsideMm, insideMm, path } = sized;
  return { outsideMm, ...known({ insideMm }), source: path };
}

export function factsOf(record: WellRecord, model: WellModel): WellFacts {
  const rest = latestRest(model.levels);
  return known({
    depth: depthOf(record, model),
    rest: rest && { m: rest.depthM, ...known({ at: rest.at }), source: rest.path },
    intakeM: record.pump?.intake,
    kind: record.pump?.kind,
    pipe: closedState(record) === undefined ? pipeOf(model) : undefined,
  });
}
