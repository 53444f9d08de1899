import { known } from '../base/known.ts';
import type { DepthM, Metres } from '../base/units.ts';
import { resolveWell } from '../model/resolveWell.ts';
import { screenRuns } from '../model/screenRuns.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { FillKind } from '../record/annulus.ts';
import type { KeptProposal } from '../record/layingOut.ts';
import type { WellRecord } from '../record/schema.ts';

/** Parts whose depths are compared. A fill is told from others of its kind by its number. */
export const comparedParts = ['casingTop', 'casingFoot', 'screen', 'fill'] as const;

export type ComparedPart = (typeof comparedParts)[number];

/** A part as laid out and as built. One that was left out, or added, has one side only. */
export interface Difference {
  readonly part: ComparedPart;
  /** What stands in the annulus, of a fill. */
  readonly fill?: FillKind | 'unrecorded';
  /** 1 for the uppermost of its kind; what was added counts on. */
  readonly number: number;
  readonly edge: 'top' | 'foot';
  readonly plannedM?: DepthM;
  readonly builtM?: DepthM;
  /** Built less planned: positive where it stands deeper. */
  readonly differenceM?: Metres;
}

/** A part with its two depths. */
interface Part {
  readonly part: 'casing' | 'screen' | 'fill';
  readonly fill?: FillKind | 'unrecorded';
  readonly topM: DepthM;
  readonly footM: DepthM;
}

/** A part as planned, as built, or both. */
interface Pair {
  readonly planned?: Part;
  readonly built?: Part;
}

function centimetres(metres: Metres): Metres {
  return Math.round(metres * 100) / 100;
}

function screenParts({ strings }: WellModel): Part[] {
  return strings
    .flatMap(screenRuns)
    .map(({ fromM, toM }): Part => ({ part: 'screen', topM: fromM, footM: toM }));
}

function partsOf(model: WellModel): Part[] {
  const casing = model.strings.map(({ topM, bottomM: footM }): Part => ({
    part: 'casing',
    topM,
    footM,
  }));
  const fills = model.annulus.map(({ fill, fromM: topM, toM: footM }): Part => ({
    part: 'fill',
    fill,
    topM,
    footM,
  }));
  return [...casing, ...screenParts(model), ...fills];
}

function apartM({ planned, built }: Required<Pair>): Metres {
  return Math.abs(planned.topM - built.topM) + Math.abs(planned.footM - built.footM);
}

/** Each planned part with the built one of its kind that lies nearest; what is left stands alone. */
function pairUp(planned: readonly Part[], built: readonly Part[]): Pair[] {
  const nearest = planned
    .flatMap((one) =>
      built
        .filter(({ part, fill }) => part === one.part && fill === one.fill)
        .map((other) => ({ planned: one, built: other })),
    )
    .sort((a, b) => apartM(a) - apartM(b));
  const paired = new Map<Part, Part>();
  for (const { planned: one, built: other } of nearest)
    if (!paired.has(one) && ![...paired.values()].includes(other)) paired.set(one, other);
  const taken = [...paired.values()];
  return [
    ...planned.map((one) => ({ planned: one, ...known({ built: paired.get(one) }) })),
    ...built.filter((one) => !taken.includes(one)).map((one) => ({ built: one })),
  ];
}

/** The two edges of a part; those of a casing are parts by themselves. */
function edgesOf({ planned, built }: Pair, number: number): Difference[] {
  const one = planned ?? built;
  if (!one) return [];
  return (['top', 'foot'] as const).map((edge) => {
    const [plannedM, builtM] = [planned, built].map((part) => part?.[`${edge}M`]);
    const both = plannedM !== undefined && builtM !== undefined;
    const casing = edge === 'top' ? 'casingTop' : 'casingFoot';
    return {
      part: one.part === 'casing' ? casing : one.part,
      ...known({ fill: one.fill }),
      number,
      edge,
      ...known({ plannedM, builtM }),
      ...(both ? { differenceM: centimetres(builtM - plannedM) } : {}),
    };
  });
}

/** The record as if nothing of it were built yet but what was laid out. */
function asPlanned(record: WellRecord, { strings, annulus }: KeptProposal): WellRecord {
  const planned = { ...record };
  delete planned.headworks;
  delete planned.strings;
  delete planned.annulus;
  return { ...planned, ...(strings ? { strings } : {}), ...(annulus ? { annulus } : {}) };
}

/**
 * Where the well as built differs from the completion that was taken, part by part. Nothing where
 * no proposal was kept. `model` is that of the record as it stands.
 */
export function differences(record: WellRecord, model: WellModel): Difference[] {
  const kept = record.layingOut?.proposal;
  if (!kept) return [];
  const planned = partsOf(resolveWell(asPlanned(record, kept)));
  const pairs = pairUp(planned, partsOf(model));
  const counted = new Map<string, number>();
  return pairs.flatMap((pair) => {
    const { part, fill } = (pair.planned ?? pair.built)!;
    const kind = `${part} ${fill ?? ''}`;
    const number = (counted.get(kind) ?? 0) + 1;
    counted.set(kind, number);
    return edgesOf(pair, number);
  });
}
