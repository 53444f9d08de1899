import { cylinderLitres, ringLitres, type Litres } from '../base/units.ts';
import type { AnnulusFill } from '../record/annulus.ts';
import type { PipeAt, WellCell } from './column.ts';
import type { AnnulusZone, PieceModel, Ring, StringModel, Totals } from './wellModel.ts';

/** Loose gravel and pack sand, kilograms a litre; handbooks give 1.5 to 1.7 (from memory). */
const gravelKgPerL = 1.6;
/** Dry bentonite or clay, chips or pellets, loose; trade data give 1.0 to 1.2 (from memory). */
const clayKgPerL = 1.1;
/** Grains of Portland cement; cement handbooks (from memory). */
const cementGrainKgPerL = 3.15;

/** Litres of neat cement slurry from a mass of cement and its water to cement ratio by mass. */
export function slurryLitres(
  cementKg: number,
  waterCement: number,
  grainKgPerL = cementGrainKgPerL,
): Litres {
  return cementKg / grainKgPerL + cementKg * waterCement;
}

function litresOfMass(fill: AnnulusFill, massKg: number): Litres | undefined {
  if (fill.fill === 'gravelPack' || fill.fill === 'formationStabiliser')
    return massKg / gravelKgPerL;
  if (fill.fill === 'claySeal' || fill.fill === 'bentonite') return massKg / clayKgPerL;
  if (fill.fill === 'cementGrout' && fill.waterCement !== undefined)
    return slurryLitres(massKg, fill.waterCement);
  return undefined;
}

/** Sum of parts; unknown as soon as one of them is. */
export function sumKnown(parts: readonly (number | undefined)[]): number | undefined {
  return parts.reduce<number | undefined>(
    (sum, part) => (sum === undefined || part === undefined ? undefined : sum + part),
    0,
  );
}

/** Sacks that the record says were poured: as written, else the sum of the pouring's steps. */
export function pouredSacks({ sacks, litres, pours }: AnnulusFill): number | undefined {
  if (sacks !== undefined || litres !== undefined || !pours?.length) return sacks;
  return sumKnown(pours.map((pour) => pour.sacks));
}

function litresOfSacks(fill: AnnulusFill, sacks: number | undefined): Litres | undefined {
  if (sacks === undefined || fill.sackMass === undefined) return undefined;
  return litresOfMass(fill, sacks * fill.sackMass);
}

/**
 * Litres that the record says were poured: `litres` as written, else sacks × mass of a sack by
 * loose density (clay counts without swelling), cement as slurry; where neither is written, the
 * sum of the pouring's steps. Absent where a sack's mass, a grout's water or the kind's density is
 * not known; nothing is guessed.
 */
export function pouredLitres(fill: AnnulusFill): Litres | undefined {
  if (fill.litres !== undefined) return fill.litres;
  if (fill.sacks !== undefined || !fill.pours?.length) return litresOfSacks(fill, fill.sacks);
  return sumKnown(fill.pours.map((pour) => pour.litres ?? litresOfSacks(fill, pour.sacks)));
}

/** Litres of rings of one zone. */
export function ringsLitres(rings: readonly Ring[]): Litres {
  return rings.reduce(
    (sum, { outerMm, innerMm, fromM, toM }) => sum + ringLitres(outerMm, innerMm, toM - fromM),
    0,
  );
}

function wallLitres({ outsideMm, insideMm }: PipeAt, lengthM: number): Litres | undefined {
  if (outsideMm === undefined || insideMm === undefined) return undefined;
  return ringLitres(outsideMm, insideMm, lengthM);
}

/** What the strings take up of the hole in one cell: the innermost whole, of others the wall. */
function displaced({ pipes, fromM, toM }: WellCell): Litres | undefined {
  const innermost = pipes.at(-1);
  if (!innermost) return 0;
  if (innermost.outsideMm === undefined) return undefined;
  const walls = pipes.slice(0, -1).map((pipe) => wallLitres(pipe, toM - fromM));
  return sumKnown([cylinderLitres(innermost.outsideMm, toM - fromM), ...walls]);
}

function pieceScreenM({ kind, topM, bottomM, insertionM }: PieceModel): number {
  return kind === 'screen' ? bottomM - topM - insertionM : 0;
}

/** Metres of screen, less what the joints hide. */
function screenLength(strings: readonly StringModel[]): number {
  return strings
    .flatMap(({ pieces }) => pieces)
    .reduce((sum, piece) => sum + pieceScreenM(piece), 0);
}

/**
 * Sums over the hole from ground to its depth. Of the annulus, what was filled into a string
 * does not count: it is the string's inside, and stands in `displacedLitres`.
 */
export function resolveTotals(
  cells: readonly WellCell[],
  zones: readonly AnnulusZone[],
  strings: readonly StringModel[],
): Totals {
  const outside = zones.filter(({ inside }) => inside === undefined);
  const sums = {
    boreLitres: sumKnown(
      cells.map(({ boreMm, fromM, toM }) =>
        boreMm === undefined ? undefined : cylinderLitres(boreMm, toM - fromM),
      ),
    ),
    displacedLitres: sumKnown(cells.map(displaced)),
    annulusLitres: sumKnown(outside.map(({ litres }) => litres)),
  };
  const told = cells.length === 0 ? [] : Object.entries(sums);
  return {
    ...Object.fromEntries(told.filter(([, litres]) => litres !== undefined)),
    screenM: screenLength(strings),
  };
}
