import { cutColumn, type WellCell } from '../../model/column.ts';
import { latestRest } from '../../model/levels.ts';
import { joinLaid } from '../../model/range.ts';
import type { ContentsModel, Ring, StringModel } from '../../model/wellModel.ts';
import type { Missing, Quantity } from '../quantity.ts';
import { reckon, sumOf, told, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { ringVolume } from '../ringVolume.ts';
import { missingOfZone, zoneVolume } from '../zones.ts';

/** Litres of the open hole, or what is missing to tell them. */
export function holeVolume({ model }: ReckonedWell): {
  readonly volume?: Quantity;
  readonly missing: readonly Missing[];
} {
  const { bore, totals } = model;
  if (bore.depthM === undefined)
    return { missing: [{ what: 'boreDepth', path: 'bore.depthReached' }] };
  const footM = bore.depthM;
  const rings = bore.sections
    .map(({ fromM, toM, diameterMm }) => ({
      fromM: Math.max(0, fromM),
      toM: Math.min(footM, toM),
      outerMm: diameterMm,
      innerMm: 0,
    }))
    .filter(({ fromM, toM }) => fromM < toM);
  const zone = { fromM: 0, toM: footM, path: 'bore' };
  const volume = reckon('boreLitres', totals.boreLitres, ringVolume(rings), { zone });
  if (volume) return { volume, missing: [] };
  return { missing: [{ what: 'boreDiameter', path: 'bore.sections' }] };
}

/** What a string holds in each cell, less the next string in it, joined where nothing changes. */
function insideRings(cells: readonly WellCell[], { index }: StringModel): Ring[] {
  const rings = cells.flatMap(({ fromM, toM, pipes }) => {
    const at = pipes.findIndex(({ string }) => string.index === index);
    const [pipe, inner] = [pipes[at], pipes[at + 1]];
    if (!pipe?.insideMm) return [];
    return [{ fromM, toM, outerMm: pipe.insideMm, innerMm: inner?.outsideMm ?? 0 }];
  });
  return joinLaid(
    rings.map((item) => ({ fromM: item.fromM, toM: item.toM, item })),
    (a, b) => a.outerMm === b.outerMm && a.innerMm === b.innerMm,
  ).map(({ fromM, toM, item }) => ({ ...item, fromM, toM }));
}

function casingVolumes(
  well: ReckonedWell,
  { fromM, toM, litres, waterLitres }: ContentsModel,
  string: StringModel,
): Quantity[] {
  const { bore, strings, levels } = well.model;
  const restM = latestRest(levels)?.depthM;
  const rings = insideRings(cutColumn(bore, strings, restM === undefined ? [] : [restM]), string);
  const wet = rings
    .map((ring) => ({ ...ring, fromM: Math.max(ring.fromM, restM ?? Infinity) }))
    .filter((ring) => ring.fromM < ring.toM);
  const { path } = string;
  return told([
    reckon('casingLitres', litres, ringVolume(rings), { zone: { fromM, toM, path } }),
    reckon('casingWaterLitres', wet.length > 0 ? waterLitres : undefined, ringVolume(wet), {
      zone: { fromM: Math.min(Math.max(fromM, restM ?? fromM), toM), toM, path },
    }),
  ]);
}

/** What the casing strings hold. */
function reckonCasing(well: ReckonedWell): Reckoned {
  const { contents, strings } = well.model;
  const parts = strings.map((string): Reckoned => {
    const held = contents.find((one) => one.string === string.index);
    const quantities = held ? casingVolumes(well, held, string) : [];
    if (quantities.length > 0) return { quantities, missing: [] };
    const { path, topM: fromM, bottomM: toM } = string;
    return { quantities, missing: [{ what: 'pipeWall', path, fromM, toM }] };
  });
  return {
    quantities: parts.flatMap(({ quantities }) => quantities),
    missing: parts.flatMap(({ missing }) => missing),
  };
}

/** Hole, annulus zone by zone and in all, casing and the water that stands in it. */
export function reckonVolumes(well: ReckonedWell): Reckoned {
  const { annulus } = well.model;
  const hole = holeVolume(well);
  const zones = annulus.map((zone) => ({ zone, volume: zoneVolume(zone) }));
  const volumes = told(zones.map(({ volume }) => volume));
  const lacking = zones.filter(({ volume }) => volume === undefined);
  const around = volumes.filter(({ id }) => id === 'annulusZoneLitres');
  const whole = lacking.some(({ zone }) => zone.inside === undefined)
    ? undefined
    : sumOf('annulusLitres', around);
  const casing = reckonCasing(well);
  return {
    quantities: told([hole.volume, ...volumes, whole, ...casing.quantities]),
    missing: [
      ...hole.missing,
      ...lacking.map(({ zone }) => missingOfZone(zone, well.model)),
      ...casing.missing,
    ],
  };
}
