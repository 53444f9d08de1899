import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';
import type { AnnulusFill } from '../../../core/record/annulus.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { bodiesOf, facesOf } from './faces.ts';
import { depthInto, type Handle, type Ring } from './handle.ts';
import { aboveGroundM, openEndM } from './limits.ts';

/** The edges of the log: its layers' boundaries, its top and its foot. */
export function logHandles({ log = [] }: WellRecord, model: WellModel): Handle[] {
  const bodies = bodiesOf('log', log, ({ material }) => ({
    is: { kind: 'layer', ...(material && { material }) },
  }));
  return facesOf(bodies, 'ground', { leastM: 0, mostM: openEndM(model) });
}

/**
 * Fills are neighbours where they stand round the same string. Those in the bare hole are
 * neighbours of the innermost string's, which they meet at its foot or above its top; those
 * inside a string are so among themselves.
 */
function spaceOf(
  { around = 0, insideHole = false }: AnnulusFill,
  path: RecordPath,
  { annulus, strings }: WellModel,
): string {
  const inside = annulus.find((zone) => zone.path === path)?.inside;
  if (inside !== undefined) return `inside ${inside}`;
  return String(insideHole ? (strings.at(-1)?.index ?? 0) : around);
}

/** Between which diameters a face of a fill is drawn. */
function ringOf(model: WellModel, { edge, depthM }: Handle): Ring | undefined {
  if (edge.kind !== 'face') return undefined;
  const paths = [edge.above?.path, edge.below?.path].filter((path) => path !== undefined);
  const rings = model.annulus
    .filter(({ path }) => path !== undefined && paths.includes(path))
    .flatMap((zone) => zone.rings)
    .filter(({ fromM, toM }) => fromM === depthM || toM === depthM);
  if (rings.length === 0) return undefined;
  return {
    inner: Math.min(...rings.map(({ innerMm }) => innerMm)),
    outer: Math.max(...rings.map(({ outerMm }) => outerMm)),
  };
}

/** The faces of pack, seals and other fills. */
export function fillHandles({ annulus = [] }: WellRecord, model: WellModel): Handle[] {
  const bodies = bodiesOf('annulus', annulus, (fill, path) => ({
    is: { kind: 'fill', fill: fill.fill },
    space: spaceOf(fill, path, model),
  }));
  const far = { leastM: -aboveGroundM, mostM: model.bore.depthM ?? openEndM(model) };
  return facesOf(bodies, 'annulus', far).map((handle) => {
    const ringMm = ringOf(model, handle);
    return ringMm ? { ...handle, ringMm } : handle;
  });
}

/** Where the hole changes its diameter, and its foot, with the depth reached where that is there. */
export function boreHandles({ bore }: WellRecord, model: WellModel): Handle[] {
  const bodies = bodiesOf('bore.sections', bore?.sections ?? [], ({ diameter }) => ({
    is: { kind: 'section', diameterMm: diameter },
  }));
  const faces = facesOf(bodies, 'bore', { leastM: 0, mostM: openEndM(model) });
  const reachedM = bore?.depthReached;
  if (reachedM === undefined || !Number.isFinite(reachedM)) return faces;
  const reached = depthInto('bore.depthReached', 'joined');
  const foot = faces.find(({ depthM }) => depthM === reachedM);
  if (foot)
    return faces.map((one) => (one === foot ? { ...one, writes: [...one.writes, reached] } : one));
  const deepestM = Math.max(0, ...bodies.map(({ toM }) => toM));
  const alone: Handle = {
    id: reached.path,
    edge: { kind: 'holeFoot' },
    lane: 'bore',
    depthM: reachedM,
    leastM: Math.min(deepestM, reachedM),
    mostM: openEndM(model),
    roundFromM: 0,
    row: reached.path,
    writes: [depthInto(reached.path)],
  };
  return [...faces, alone];
}
