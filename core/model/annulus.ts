import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import { tapeToleranceM } from './bore.ts';
import type { WellCell } from './column.ts';
import { preferFill, sameSpace, spaceOf, type Fill, type Space } from './fills.ts';
import { found, type Resolved } from './findings.ts';
import { covers, joinLaid, type Laid } from './range.ts';
import { pouredLitres, pouredSacks, ringsLitres } from './volumes.ts';
import type { AnnulusZone, Ring, StringModel } from './wellModel.ts';

/** A fill, or the lack of one, in one space of one cell. */
interface Stand {
  readonly fill: Fill | undefined;
  readonly space: Space;
  /** Its ring, `none` where the walls touch, undefined where a diameter is not known. */
  readonly ring: Ring | 'none' | undefined;
}

function ring(
  cell: WellCell,
  innerMm: number | undefined,
  outerMm: number | undefined,
): Stand['ring'] {
  // A pipe wider than what it stands in is a contradiction: no volume can be told.
  if (innerMm === undefined || outerMm === undefined || innerMm > outerMm) return undefined;
  return innerMm === outerMm ? 'none' : { fromM: cell.fromM, toM: cell.toM, innerMm, outerMm };
}

function ringIn(space: Space, cell: WellCell): Stand['ring'] {
  if (space.kind === 'hole') return ring(cell, 0, cell.boreMm);
  const at = cell.pipes.findIndex(({ string }) => string.index === space.string);
  const pipe = cell.pipes[at];
  if (space.kind === 'inside') return ring(cell, 0, pipe?.insideMm);
  const outer = at === 0 ? cell.boreMm : cell.pipes[at - 1]?.insideMm;
  return ring(cell, pipe?.outsideMm, outer);
}

/** The spaces of a cell that something should fill; a hole without any string stands open. */
function spacesIn(cell: WellCell, strings: readonly StringModel[]): Space[] {
  if (cell.pipes.length > 0)
    return cell.pipes.map(({ string }) => ({ kind: 'around', string: string.index }));
  return strings.length > 0 ? [{ kind: 'hole' }] : [];
}

function standsIn(
  cell: WellCell,
  fills: readonly Fill[],
  strings: readonly StringModel[],
): Stand[] {
  const claims = fills
    .filter((fill) => covers(fill, cell))
    .flatMap((fill) => {
      const space = spaceOf(fill, cell, strings);
      return space ? [{ fill, space }] : [];
    });
  const others = claims.map(({ space }) => space);
  const spaces = [...spacesIn(cell, strings), ...others].filter(
    (space, at, all) => all.findIndex((one) => sameSpace(one, space)) === at,
  );
  return spaces.map((space) => {
    const there = claims.filter((claim) => sameSpace(claim.space, space)).map(({ fill }) => fill);
    const fill = there.length > 0 ? there.reduce(preferFill) : undefined;
    return { fill, space, ring: ringIn(space, cell) };
  });
}

/** A recorded fill that goes on under the foot of its string stays one zone. */
function sameZone(a: Stand, b: Stand): boolean {
  if (a.fill !== b.fill) return false;
  if (sameSpace(a.space, b.space)) return true;
  const oneIsHole = a.space.kind === 'hole' || b.space.kind === 'hole';
  return a.fill !== undefined && oneIsHole;
}

function joinRings(rings: readonly Ring[]): Ring[] {
  return joinLaid(
    rings.map((item) => ({ fromM: item.fromM, toM: item.toM, item })),
    (a, b) => a.innerMm === b.innerMm && a.outerMm === b.outerMm,
  ).map(({ fromM, toM, item }) => ({ ...item, fromM, toM }));
}

interface Zone {
  readonly stands: readonly Laid<Stand>[];
}

/** Gathers what stands in neighbouring cells into zones, in order of depth. */
function gatherZones(stands: readonly Laid<Stand>[]): Zone[] {
  const zones: Laid<Stand>[][] = [];
  for (const stand of stands) {
    const upper = zones.findLast((zone) => {
      const last = zone.at(-1);
      return last?.toM === stand.fromM && sameZone(last.item, stand.item);
    });
    if (upper) upper.push(stand);
    else zones.push([stand]);
  }
  return zones.map((stands) => ({ stands }));
}

function placeOf(stands: readonly Laid<Stand>[]): { around?: number; inside?: number } {
  const space = stands.map(({ item }) => item.space).find(({ kind }) => kind !== 'hole');
  if (!space || space.kind === 'hole') return {};
  return space.kind === 'around' ? { around: space.string } : { inside: space.string };
}

function zoneModel({ stands }: Zone, bearsPoured: boolean): AnnulusZone[] {
  const [top, last] = [stands[0], stands.at(-1)];
  if (!top || !last) return [];
  const entry = top.item.fill?.entry;
  const told = stands.map(({ item }) => item.ring);
  const rings = joinRings(told.filter((one) => one !== undefined && one !== 'none'));
  const bears = bearsPoured ? entry : undefined;
  return [
    {
      fromM: top.fromM,
      toM: last.toM,
      fill: entry?.fill ?? 'unrecorded',
      sanitary: entry?.sanitary ?? false,
      ...placeOf(stands),
      rings,
      ...(told.includes(undefined) ? {} : { litres: ringsLitres(rings) }),
      ...known({
        pouredLitres: bears && pouredLitres(bears),
        sacks: bears && pouredSacks(bears),
      }),
      ...known({ grainMinMm: entry?.grainMin, grainMaxMm: entry?.grainMax }),
      ...known({ path: top.item.fill?.path }),
    },
  ];
}

function checkOverlaps(
  fills: readonly Fill[],
  cells: readonly WellCell[],
  strings: readonly StringModel[],
): Finding[] {
  return fills.flatMap((one, at) =>
    fills.slice(at + 1).flatMap((other) => {
      const shared = cells.filter((cell) => {
        if (!covers(one, cell) || !covers(other, cell)) return false;
        const [a, b] = [spaceOf(one, cell, strings), spaceOf(other, cell, strings)];
        return a !== undefined && b !== undefined && sameSpace(a, b);
      });
      const laid = shared.map(({ fromM, toM }) => ({ fromM, toM, item: undefined }));
      return joinLaid(laid, () => true).map(({ fromM, toM }) =>
        found(
          'annulus.overlap',
          other.path,
          { fill: other.entry.fill, other: one.entry.fill },
          { fromM, toM },
        ),
      );
    }),
  );
}

/** Stretches that nobody wrote of; those shorter than a tape tells apart are let pass. */
function checkUnrecorded(
  zones: readonly AnnulusZone[],
  label: (index: number) => string | number,
): Finding[] {
  return zones
    .filter(({ fill, fromM, toM }) => fill === 'unrecorded' && toM - fromM > tapeToleranceM)
    .map(({ around, fromM, toM }) =>
      around === undefined
        ? found('annulus.unrecordedHole', 'annulus', {}, { fromM, toM })
        : found('annulus.unrecorded', 'annulus', { string: label(around) }, { fromM, toM }),
    );
}

/**
 * The zones of the annulus. `cells` are those from ground to the foot of the hole, parted at the
 * fills' ends. Each space that no fill covers becomes an `unrecorded` zone.
 */
export function resolveAnnulus(
  fills: readonly Fill[],
  cells: readonly WellCell[],
  strings: readonly StringModel[],
  label: (index: number) => string | number,
): Resolved<AnnulusZone[]> {
  const stands = cells.flatMap((cell) =>
    standsIn(cell, fills, strings).map((item) => ({
      fromM: cell.fromM,
      toM: cell.toM,
      item,
    })),
  );
  const zones = gatherZones(stands);
  const fillOf = (zone: Zone | undefined) => zone?.stands[0]?.item.fill;
  const value = zones.flatMap((zone) => {
    const first = zones.find((one) => fillOf(one) === fillOf(zone));
    return zoneModel(zone, first === zone);
  });
  return {
    value,
    findings: [...checkOverlaps(fills, cells, strings), ...checkUnrecorded(value, label)],
  };
}
