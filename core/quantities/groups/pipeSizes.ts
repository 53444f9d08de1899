import { known } from '../../base/known.ts';
import type { RecordPath } from '../../base/recordPath.ts';
import { ringLitres, type Metres } from '../../base/units.ts';
import type { PieceModel, StringModel } from '../../model/wellModel.ts';
import type { Practice } from '../../practice/practice.ts';
import { counted, fromFigure, fromModel, fromQuantity } from '../inputs.ts';
import { densityOf } from '../pipeMaterial.ts';
import type { Missing, PipeSize, Quantity } from '../quantity.ts';
import { reckon, told, type Reckoned } from '../reckon.ts';
import { sources } from '../sources.ts';

/** Pipes that are alike but for their lengths. */
export interface SizedPipes {
  readonly size: PipeSize;
  /** Of each, end to end; 0 for a cap that was given none. */
  readonly lengthsM: readonly Metres[];
  /** Where the first of them stands in the record; a loose cap needs no measures. */
  readonly path?: RecordPath;
  readonly insideMm?: number;
}

function sizeOf(piece: PieceModel): PipeSize {
  const { kind, material, outsideMm, upperOutsideMm, wallMm } = piece;
  const upper = upperOutsideMm === outsideMm ? undefined : upperOutsideMm;
  return { kind, ...known({ material, outsideMm, upperOutsideMm: upper, wallMm }) };
}

/** Items of one name together, in the order of the first of each. */
function gathered<T>(items: readonly T[], nameOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(nameOf(item), [...(groups.get(nameOf(item)) ?? []), item]);
  return [...groups.values()];
}

/** The pieces of all strings by kind, material and size, in the order in which they go down. */
export function pipesOfOneSize(strings: readonly StringModel[]): SizedPipes[] {
  const pieces = strings.flatMap((string) => string.pieces.toReversed());
  return gathered(pieces, (piece) => JSON.stringify(sizeOf(piece))).map((group) => ({
    size: sizeOf(group[0]!),
    lengthsM: group.map(({ topM, bottomM }) => bottomM - topM),
    path: group[0]!.path,
    ...known({ insideMm: group[0]!.insideMm }),
  }));
}

/** Stretches of one length among pipes, as their count and that length. */
function lengthTerms(lengthsM: readonly Metres[]): { count: number; lengthM: Metres }[] {
  return gathered(lengthsM, (lengthM) => lengthM.toFixed(3)).map((group) => ({
    count: group.length,
    lengthM: group[0]!,
  }));
}

function metresOf({ size, lengthsM }: SizedPipes): Quantity | undefined {
  const terms = lengthTerms(lengthsM);
  return reckon(
    'pipeM',
    lengthsM.reduce((sum, lengthM) => sum + lengthM, 0),
    {
      formula: 'L = Σ nᵢ · Lᵢ',
      inputs: terms.flatMap(({ count, lengthM }, at) => [
        fromModel(counted('n', at + 1), count, '1'),
        fromModel(counted('L', at + 1), lengthM, 'm'),
      ]),
      source: sources.geometry,
    },
    { pipe: size },
  );
}

/**
 * Mass of pipes by their wall, of a reducer by its lower end; slots and bells, which take away and
 * add little, do not count.
 */
function massOf(
  { size, insideMm }: SizedPipes,
  metres: Quantity,
  practice: Practice,
): Quantity | undefined {
  const density = densityOf(size.material);
  if (size.outsideMm === undefined || insideMm === undefined || !density) return undefined;
  const kgPerL = fromFigure('ρ', density, practice);
  return reckon(
    'pipeKg',
    ringLitres(size.outsideMm, insideMm, metres.value) * kgPerL.value,
    {
      formula: 'm = π/4 · (D² − d²) · L · ρ',
      inputs: [
        fromModel('D', size.outsideMm, 'mm'),
        fromModel('d', insideMm, 'mm'),
        fromQuantity('L', metres),
        kgPerL,
      ],
      source: sources.geometry,
    },
    { pipe: size },
  );
}

function missingOfMass({ size, path = 'strings' }: SizedPipes): Missing {
  if (densityOf(size.material) === undefined)
    return { what: 'pipeMaterial', path: `${path}.material` };
  if (size.outsideMm === undefined) return { what: 'pipeDiameter', path: `${path}.outside` };
  return { what: 'pipeWall', path: `${path}.wall` };
}

/** How many of a size, how long together, how heavy. */
export function reckonSize(pipes: SizedPipes, practice: Practice): Reckoned {
  const { size, lengthsM, path } = pipes;
  const count = reckon(
    'pipeCount',
    lengthsM.length,
    {
      formula: 'n = Σ nᵢ',
      inputs: lengthTerms(lengthsM).map(({ count: alike }, at) =>
        fromModel(counted('n', at + 1), alike, '1'),
      ),
      source: sources.geometry,
    },
    { pipe: size },
  );
  if (path === undefined) return { quantities: told([count]), missing: [] };
  const metres = metresOf(pipes);
  const mass = metres && massOf(pipes, metres, practice);
  return {
    quantities: told([count, metres, mass]),
    missing: mass ? [] : [missingOfMass(pipes)],
  };
}
