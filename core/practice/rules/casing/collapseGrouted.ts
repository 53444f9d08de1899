import type { Severity } from '../../../base/finding.ts';
import { valueAt } from '../../../base/recordPath.ts';
import { stringLabel } from '../../../model/setting.ts';
import { joinLaid, type Laid } from '../../../model/range.ts';
import type { AnnulusZone, PieceModel, StringModel } from '../../../model/wellModel.ts';
import type { AnnulusFill } from '../../../record/annulus.ts';
import { waterKPaPerM } from '../../strength/collapse.ts';
import { groutKgL } from '../../strength/grout.ts';
import { givesWater } from '../stage.ts';
import { broken } from '../ruleCodes.ts';
import {
  figureOf,
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { doubtsOf } from '../doubts.ts';
import { pressString, weakest } from './plastic.ts';
import { together } from './together.ts';

/** Grout that stands fluid in one column, with its density. */
type GroutColumn = Laid<number>;

function densityOf(well: JudgedWell, { path }: AnnulusZone): number {
  const fill = path === undefined ? undefined : (valueAt(well.record, path) as AnnulusFill);
  const waterCement = fill?.waterCement || figureOf(well, 'groutWaterCement');
  return groutKgL(waterCement, figureOf(well, 'cementGrainKgL'));
}

/** Grout round a string, from the top down; fills that touch were poured as one, at the heavier. */
function groutRound(well: JudgedWell, { index }: StringModel): GroutColumn[] {
  const zones = well.model.annulus
    .filter(({ fill, around }) => fill === 'cementGrout' && around === index)
    .map((zone) => ({ fromM: zone.fromM, toM: zone.toM, item: densityOf(well, zone) }))
    .sort((a, b) => a.fromM - b.fromM);
  const heaviest = Math.max(...zones.map(({ item }) => item));
  return joinLaid(
    zones.map((zone) => ({ ...zone, item: heaviest })),
    () => true,
  );
}

/** Grout outside less water inside, both up to the top of the grout, at the foot of a piece. */
function loadOn({ topM, bottomM }: PieceModel, columns: readonly GroutColumn[]): number {
  const loads = columns
    .filter(({ fromM, toM }) => topM < toM && bottomM > fromM)
    .map(({ fromM, toM, item }) => (item - 1) * (Math.min(bottomM, toM) - fromM) * waterKPaPerM);
  return Math.max(0, ...loads);
}

function severityOf({ record }: JudgedWell, factor: number): Severity {
  if (record.identity?.state === 'completed') return 'note';
  return factor < 1 ? 'error' : 'warning';
}

function judgeString(well: JudgedWell, string: StringModel): Verdict {
  const columns = groutRound(well, string);
  if (columns.length === 0) return notApplicable;
  const doubts = doubtsOf(well.model, string);
  if (doubts.length > 0) return unjudged(...doubts);
  const warmC = figureOf(well, 'groundC') + figureOf(well, 'groutRiseC');
  const press = pressString(well, string, (piece) => loadOn(piece, columns), warmC);
  if (press.pressed.length === 0 && press.missing.length === 0) return notApplicable;
  const wanted = figureOf(well, 'collapseFactor');
  const weak = weakest(press, wanted);
  if (!weak) return judged([], press.missing);
  const { piece, outsideMm, wallMm, loadKPa, holdsKPa, factor } = weak;
  const values = {
    string: stringLabel(well.record.strings?.[string.index], string.index),
    outsideMm,
    wallMm,
    load: Math.round(loadKPa),
    holds: Math.round(holdsKPa),
    warm: warmC,
    factor,
    wanted,
  };
  const stretch = { fromM: piece.topM, toM: piece.bottomM };
  const severity = severityOf(well, factor);
  return judged([broken('collapse.grouted', severity, piece.path, values, stretch)], press.missing);
}

/**
 * Plastic pipe is not pressed in by fluid grout, whose heat softens it, while it is full of water
 * inside. In a completed well that is past, and worth a note.
 */
export const collapseGrouted: Rule = {
  id: 'collapse.grouted',
  figures: [
    'collapseFactor',
    'pvcModulusMPa',
    'pvcPoisson',
    'pvcRatedAtC',
    'pvcLossPercentPerC',
    'groundC',
    'groutRiseC',
    'groutWaterCement',
    'cementGrainKgL',
  ],
  judge: (well) =>
    givesWater(well.record)
      ? together(well.model.strings.map((string) => judgeString(well, string)))
      : notApplicable,
};
