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
  /** 1 for the uppermost of its kind. */
  readonly number: number;
  readonly edge: 'top' | 'foot';
  readonly plannedM?: DepthM;
  readonly builtM?: DepthM;
  /** Built less planned: positive where it stands deeper. */
  readonly differenceM?: Metres;
}

interface Edge {
  readonly part: ComparedPart;
  readonly fill?: FillKind | 'unrecorded';
  readonly number: number;
  readonly edge: 'top' | 'foot';
  readonly depthM: DepthM;
}

function bothEdges(
  of: Omit<Edge, 'edge' | 'depthM'>,
  { topM, footM }: { topM: DepthM; footM: DepthM },
): Edge[] {
  return [
    { ...of, edge: 'top', depthM: topM },
    { ...of, edge: 'foot', depthM: footM },
  ];
}

function edgesOf(model: WellModel): Edge[] {
  const strings = model.strings.flatMap(({ topM, bottomM }, at): Edge[] => [
    { part: 'casingTop', number: at + 1, edge: 'top', depthM: topM },
    { part: 'casingFoot', number: at + 1, edge: 'foot', depthM: bottomM },
  ]);
  const screens = model.strings
    .flatMap(screenRuns)
    .flatMap(({ fromM, toM }, at) =>
      bothEdges({ part: 'screen', number: at + 1 }, { topM: fromM, footM: toM }),
    );
  const counted = new Map<string, number>();
  const fills = model.annulus.flatMap(({ fill, fromM, toM }) => {
    const number = (counted.get(fill) ?? 0) + 1;
    counted.set(fill, number);
    return bothEdges({ part: 'fill', fill, number }, { topM: fromM, footM: toM });
  });
  return [...strings, ...screens, ...fills];
}

function sameEdge(a: Edge, b: Edge): boolean {
  return a.part === b.part && a.fill === b.fill && a.number === b.number && a.edge === b.edge;
}

/** The record as if nothing of it were built yet but what was laid out. */
function asPlanned(record: WellRecord, { strings, annulus }: KeptProposal): WellRecord {
  const planned = { ...record };
  delete planned.headworks;
  delete planned.strings;
  delete planned.annulus;
  return { ...planned, ...(strings ? { strings } : {}), ...(annulus ? { annulus } : {}) };
}

function centimetres(metres: Metres): Metres {
  return Math.round(metres * 100) / 100;
}

/**
 * Where the well as built differs from the completion that was taken, part by part. Nothing where
 * no proposal was kept. `model` is that of the record as it stands.
 */
export function differences(record: WellRecord, model: WellModel): Difference[] {
  const kept = record.layingOut?.proposal;
  if (!kept) return [];
  const planned = edgesOf(resolveWell(asPlanned(record, kept)));
  const built = edgesOf(model);
  const both = planned.map((edge) => ({ edge, other: built.find((one) => sameEdge(one, edge)) }));
  const added = built.filter((edge) => !planned.some((one) => sameEdge(one, edge)));
  const told = ({ part, fill, number, edge }: Edge) => ({
    part,
    ...(fill === undefined ? {} : { fill }),
    number,
    edge,
  });
  return [
    ...both.map(({ edge, other }) => ({
      ...told(edge),
      plannedM: edge.depthM,
      ...(other
        ? { builtM: other.depthM, differenceM: centimetres(other.depthM - edge.depthM) }
        : {}),
    })),
    ...added.map((edge) => ({ ...told(edge), builtM: edge.depthM })),
  ];
}
