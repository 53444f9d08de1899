import { cylinderLitres, ringLitres, type DepthM, type Metres } from '../../base/units.ts';
import { cutColumn, type WellCell } from '../../model/column.ts';
import { latestRest } from '../../model/levels.ts';
import { covers, cut } from '../../model/range.ts';
import type { AnnulusZone, WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import { assumptions } from '../assumptions.ts';
import { counted, exactly, fromAssumption, reckoned } from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { Reckoned, ReckonedInput } from '../reckoned.ts';
import type { MissingForDosing, MissingInput } from '../results.ts';
import { sources } from '../sources.ts';

/** Which water beside that in the pipes is dosed. */
export interface DosedParts {
  readonly packVoids?: boolean;
  readonly riser?: boolean;
}

export interface StandingWater {
  readonly volumes: readonly Reckoned[];
  readonly missing: readonly MissingInput<MissingForDosing>[];
}

/** Water over a length: of a full bore, or between two diameters. */
interface Stretch {
  readonly lengthM: Metres;
  readonly outerMm: number;
  readonly innerMm: number;
}

function fromModel(symbol: string, value: number, unit: string): ReckonedInput {
  return { symbol, value: exactly(value), unit, from: 'model' };
}

function measures(stretches: readonly Stretch[]): ReckonedInput[] {
  return stretches.flatMap(({ lengthM, outerMm, innerMm }, at) => {
    const name = (symbol: string) => (stretches.length === 1 ? symbol : counted(symbol, at + 1));
    return [
      fromModel(name('D'), outerMm, 'mm'),
      ...(innerMm === 0 ? [] : [fromModel(name('d'), innerMm, 'mm')]),
      fromModel(name('L'), lengthM, 'm'),
    ];
  });
}

function litresIn(stretches: readonly Stretch[]): Interval {
  return exactly(
    stretches.reduce(
      (sum, { lengthM, outerMm, innerMm }) => sum + ringLitres(outerMm, innerMm, lengthM),
      0,
    ),
  );
}

function bored(
  id: 'pipeWaterLitres' | 'holeWaterLitres',
  stretches: readonly Stretch[],
): Reckoned[] {
  if (stretches.length === 0) return [];
  const formula = stretches.length === 1 ? 'V = π/4 · D² · L' : 'V = Σ π/4 · Dᵢ² · Lᵢ';
  return [reckoned(id, litresIn(stretches), formula, measures(stretches), sources.geometry)];
}

/** Neighbours of one diameter are one stretch. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const all: Stretch[] = [];
  for (const next of stretches) {
    const last = all.at(-1);
    if (last && last.outerMm === next.outerMm && last.innerMm === next.innerMm)
      all[all.length - 1] = { ...last, lengthM: last.lengthM + next.lengthM };
    else all.push(next);
  }
  return all;
}

/** Full of a fill: what stands in the hole without a string, or inside of one. */
function isFilled(cell: WellCell, zones: readonly AnnulusZone[]): boolean {
  return zones.some(
    ({ fill, around, inside, rings, ...range }) =>
      !['open', 'unrecorded'].includes(fill) &&
      covers(range, cell) &&
      (inside !== undefined ||
        around === undefined ||
        (cell.pipes.length === 0 &&
          rings.some((ring) => ring.innerMm === 0 && covers(ring, cell)))),
  );
}

function boredWater(cells: readonly WellCell[]): StandingWater {
  const [pipes, hole]: [Stretch[], Stretch[]] = [[], []];
  const missing: MissingInput<MissingForDosing>[] = [];
  for (const { fromM, toM, boreMm, pipes: there } of cells) {
    const inner = there.at(-1);
    const outerMm = inner ? inner.insideMm : boreMm;
    if (outerMm !== undefined)
      (inner ? pipes : hole).push({ lengthM: toM - fromM, outerMm, innerMm: 0 });
    else if (inner) missing.push({ what: 'pipeInside', path: inner.string.path });
    else missing.push({ what: 'hole', path: 'bore' });
  }
  const wet = (stretches: readonly Stretch[]) =>
    joined(stretches).filter(({ outerMm }) => outerMm > 0);
  return {
    volumes: [...bored('pipeWaterLitres', wet(pipes)), ...bored('holeWaterLitres', wet(hole))],
    missing: missing.filter(
      ({ path }, at) => missing.findIndex((other) => other.path === path) === at,
    ),
  };
}

const packs: readonly AnnulusZone['fill'][] = ['gravelPack', 'formationStabiliser'];

function packWater({ annulus }: WellModel, restM: DepthM): StandingWater {
  const zones = annulus.filter((zone) => packs.includes(zone.fill) && zone.toM > restM);
  const unknown = zones.filter(({ litres }) => litres === undefined);
  if (unknown.length > 0)
    return {
      volumes: [],
      missing: unknown.map(({ path = 'annulus' }) => ({ what: 'packSizes', path })),
    };
  const stretches = zones.flatMap(({ rings }) =>
    rings.flatMap((ring) => {
      const wet = cut(ring, restM, ring.toM);
      if (!wet) return [];
      const { outerMm, innerMm } = ring;
      return [{ lengthM: wet.toM - wet.fromM, outerMm, innerMm }];
    }),
  );
  if (stretches.length === 0) return { volumes: [], missing: [] };
  const voids = assumptions.packVoids.value.most;
  const value = exactly(litresIn(stretches).most * voids);
  const i = stretches.length === 1 ? '' : 'ᵢ';
  const ring = `π/4 · (D${i}² − d${i}²) · L${i}`;
  const formula = `V = n · ${stretches.length === 1 ? '' : 'Σ '}${ring}`;
  const inputs = [fromAssumption('n', 'packVoids'), ...measures(stretches)];
  return {
    volumes: [reckoned('packWaterLitres', value, formula, inputs, sources.geometry)],
    missing: [],
  };
}

/** Water that a riser holds above the rest level, up to the spout. */
function riserWater({ pump }: WellRecord, restM: DepthM): StandingWater {
  const outsideMm = pump?.riserDiameter;
  if (outsideMm === undefined)
    return { volumes: [], missing: [{ what: 'riser', path: 'pump.riserDiameter' }] };
  const spoutM = assumptions.spout.value.most;
  const value = exactly(cylinderLitres(outsideMm, Math.max(0, restM + spoutM)));
  const inputs: ReckonedInput[] = [
    {
      symbol: 'D',
      value: exactly(outsideMm),
      unit: 'mm',
      from: { path: 'pump.riserDiameter' },
    },
    fromModel('h', restM, 'm'),
    fromAssumption('s', 'spout'),
  ];
  return {
    volumes: [
      reckoned('riserWaterLitres', value, 'V = π/4 · D² · (h + s)', inputs, sources.geometry),
    ],
    missing: [],
  };
}

/**
 * Water that stands in a well under its latest rest level: in the innermost pipe, in open hole
 * under it, and where it is asked for in the voids of the pack and in the riser. A part whose
 * sizes are not known is told as missing.
 */
export function standingWater(
  record: WellRecord,
  model: WellModel,
  { packVoids = false, riser = false }: DosedParts = {},
): StandingWater {
  const restM = latestRest(model.levels)?.depthM;
  if (restM === undefined) return { volumes: [], missing: [{ what: 'restLevel', path: 'levels' }] };
  const cells = cutColumn(model.bore, model.strings, [
    restM,
    ...model.annulus.flatMap(({ fromM, toM }) => [fromM, toM]),
  ]).filter((cell) => cell.fromM >= restM && !isFilled(cell, model.annulus));
  const nothing = cells.length === 0 ? [{ what: 'hole', path: 'bore' } as const] : [];
  const parts = [
    boredWater(cells),
    ...(packVoids ? [packWater(model, restM)] : []),
    ...(riser ? [riserWater(record, restM)] : []),
  ];
  return {
    volumes: parts.flatMap(({ volumes }) => volumes),
    missing: [...nothing, ...parts.flatMap(({ missing }) => missing)],
  };
}
