import type { Millimetres } from '../../../base/units.ts';
import { roundDepth } from '../../../model/range.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import { collapseKPa, dimensionRatio, inWarmthKPa } from '../../strength/collapse.ts';
import { figureOf, type JudgedWell, type Missing } from '../rule.ts';
import { isUnder } from './compare.ts';

/** Words for PVC in three languages; plastic casing that is not named further is PVC. */
const plasticWords = /pvc|plasti|plásti|vinyl|vinil/i;

/** A pipe with what presses on it and what it holds. */
export interface Pressed {
  readonly piece: PieceModel;
  readonly outsideMm: Millimetres;
  readonly wallMm: Millimetres;
  readonly loadKPa: number;
  readonly holdsKPa: number;
  /** Holds over load. */
  readonly factor: number;
}

/** The pipes of a string under load, and what is missing to know what they hold. */
export interface PressedString {
  readonly pressed: readonly Pressed[];
  readonly missing: readonly Missing[];
}

function wallOf({ wallMm, outsideMm, insideMm }: PieceModel): Millimetres | undefined {
  if (wallMm !== undefined || outsideMm === undefined || insideMm === undefined) return wallMm;
  return roundDepth((outsideMm - insideMm) / 2);
}

function strengthKPa(well: JudgedWell, outsideMm: number, wallMm: number, atC: number): number {
  const stiffness = {
    modulusMPa: figureOf(well, 'pvcModulusMPa'),
    poisson: figureOf(well, 'pvcPoisson'),
  };
  const heat = {
    ratedAtC: figureOf(well, 'pvcRatedAtC'),
    lossPercentPerC: figureOf(well, 'pvcLossPercentPerC'),
  };
  return inWarmthKPa(collapseKPa(dimensionRatio(outsideMm, wallMm), stiffness), atC, heat);
}

function pressPiece(
  well: JudgedWell,
  piece: PieceModel,
  loadKPa: number,
  atC: number,
): Pressed | Missing | undefined {
  const { material, outsideMm, path } = piece;
  if (material === undefined) return { what: 'pipeMaterial', path: `${path}.material` };
  if (!plasticWords.test(material)) return undefined;
  const wallMm = wallOf(piece);
  if (outsideMm === undefined) return { what: 'pipeDiameter', path: `${path}.outside` };
  if (wallMm === undefined) return { what: 'pipeWall', path: `${path}.wall` };
  const holdsKPa = strengthKPa(well, outsideMm, wallMm, atC);
  return { piece, outsideMm, wallMm, loadKPa, holdsKPa, factor: holdsKPa / loadKPa };
}

/** Plain pipe, of which the formula speaks; it does not of slotted pipe and of reducers. */
function isWhole({ kind }: PieceModel): boolean {
  return kind === 'plain' || kind === 'sump';
}

/** The plastic pipes of a string that something presses on (kPa), at a temperature. */
export function pressString(
  well: JudgedWell,
  { pieces }: StringModel,
  loadKPa: (piece: PieceModel) => number,
  atC: number,
): PressedString {
  const all = pieces.filter(isWhole).flatMap((piece) => {
    const load = loadKPa(piece);
    return load > 0 ? (pressPiece(well, piece, load, atC) ?? []) : [];
  });
  return {
    pressed: all.flatMap((one) => ('piece' in one ? one : [])),
    missing: all.flatMap((one) => ('piece' in one ? [] : one)),
  };
}

/** The pipe that holds the least beside what presses on it, where that is less than a factor. */
export function weakest({ pressed }: PressedString, factor: number): Pressed | undefined {
  const sorted = [...pressed].sort((a, b) => a.factor - b.factor);
  return sorted.find((one) => isUnder(one.factor, factor));
}
