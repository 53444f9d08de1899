import type { LayingOut } from '../record/layingOut.ts';
import { known } from '../base/known.ts';
import type { AnnulusFill, FillKind } from '../record/annulus.ts';
import type { Practice } from '../practice/practice.ts';
import { metresOf, type Centimetres } from './centimetres.ts';
import type { Aquifer, Bed } from './ground.ts';
import type { Limits } from './limits.ts';
import { sealedToCm } from './problem.ts';

/** What the annulus is laid out round: one slotted stretch in an aquifer. */
export interface Slotted {
  readonly aquifer: Aquifer;
  readonly topCm: Centimetres;
  /** Depth of the open hole, and of the hole as drilled. */
  readonly holeCm: Centimetres;
  readonly drilledCm: Centimetres;
}

/**
 * Ground between pack and aquitard that is rather packed than sealed twice: three metres, common
 * practice.
 */
const nearCm = 300;

/** The shallowest that the pack may end for the seals that stand above it. */
function shallowestPackCm({ aquifer: { roof } }: Slotted, least: Limits): Centimetres {
  return Math.max(sealedToCm(least), roof ? roof.topCm + least.partingClayCm : -Infinity);
}

/**
 * Where the pack ends: as far above the slots as the practice wants and there is room for; up to
 * the ground that parts the aquifer from the next above, where that is near.
 */
function packTopCm(slotted: Slotted, full: Limits, least: Limits): Centimetres {
  const shallowestCm = shallowestPackCm(slotted, least);
  const wantedCm = Math.max(slotted.topCm - full.packCm, shallowestCm);
  const { roof } = slotted.aquifer;
  const isNear = roof && roof.footCm < wantedCm && wantedCm - roof.footCm <= nearCm;
  return isNear && roof.footCm >= shallowestCm ? roof.footCm : wantedCm;
}

interface Zone extends Bed {
  readonly fill: FillKind;
}

/** The seal in what parts the aquifer from the one above, where the seal on the pack misses it. */
function roofSeal({ roof }: Aquifer, clay: Bed, full: Limits): Zone[] {
  if (!roof || roof.footCm > clay.topCm) return [];
  const topCm = Math.max(roof.topCm, roof.footCm - full.clayCm, full.sanitaryCm);
  return topCm < roof.footCm ? [{ fill: 'claySeal', topCm, footCm: roof.footCm }] : [];
}

/** What stands under the aquifer where the hole goes on into the next. */
function under({ floor }: Aquifer, holeCm: Centimetres, full: Limits): Zone[] {
  if (!floor || floor.footCm >= holeCm) return [];
  const footCm = Math.min(floor.topCm + full.clayCm, floor.footCm);
  return [
    { fill: 'claySeal', topCm: floor.topCm, footCm },
    { fill: 'backfill', topCm: footCm, footCm: holeCm },
  ];
}

/** Backfill where nothing else stands. */
function fillGaps(zones: readonly Zone[]): Zone[] {
  const sorted = [...zones].sort((a, b) => a.topCm - b.topCm);
  return sorted.flatMap((zone, at) => {
    const aboveCm = sorted[at - 1]?.footCm ?? 0;
    const gap = { fill: 'backfill', topCm: aboveCm, footCm: zone.topCm } as const;
    return zone.topCm > aboveCm ? [gap, zone] : [zone];
  });
}

function zonesOf(slotted: Slotted, full: Limits, least: Limits): Zone[] {
  const { aquifer, holeCm } = slotted;
  const packCm = packTopCm(slotted, full, least);
  const clay = { topCm: Math.max(packCm - full.clayCm, full.sanitaryCm), footCm: packCm };
  const below = under(aquifer, holeCm, full);
  return fillGaps([
    { fill: 'cementGrout', topCm: 0, footCm: full.sanitaryCm },
    ...roofSeal(aquifer, clay, full),
    { fill: 'claySeal', ...clay },
    { fill: 'gravelPack', topCm: packCm, footCm: below[0]?.topCm ?? holeCm },
    ...below,
  ]);
}

/**
 * The fills round a string, from the ground down: sanitary seal, backfill, clay, pack. `full` are
 * the limits that the practice wants, `least` those that the completion was searched by.
 */
export function layFills(
  slotted: Slotted,
  full: Limits,
  least: Limits,
  { grainMin, grainMax }: LayingOut,
  practice: Practice,
): AnnulusFill[] {
  const { holeCm, drilledCm } = slotted;
  const fills = zonesOf(slotted, full, least).map(({ fill, topCm, footCm }): AnnulusFill => ({
    from: metresOf(topCm),
    to: metresOf(footCm),
    fill,
    ...(fill === 'gravelPack' ? known({ grainMin, grainMax }) : {}),
    ...(fill === 'cementGrout'
      ? { sanitary: true, waterCement: practice.figures.groutWaterCement.value }
      : {}),
  }));
  if (drilledCm <= holeCm) return fills;
  const fallen = { from: metresOf(holeCm), to: metresOf(drilledCm) };
  return [...fills, { ...fallen, fill: 'naturalCollapse', insideHole: true }];
}
