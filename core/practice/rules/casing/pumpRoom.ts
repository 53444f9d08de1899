import type { DepthM } from '../../../base/units.ts';
import type { PieceModel } from '../../../model/wellModel.ts';
import { givesWater } from '../stage.ts';
import { broken } from '../ruleCodes.ts';
import {
  figureOf,
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Missing,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { isUnder } from './compare.ts';

/** Pipes that a pump passes on its way down to a depth. */
function passedBy({ model }: JudgedWell, depthM: DepthM): PieceModel[] {
  return model.strings
    .flatMap(({ pieces }) => pieces)
    .filter(({ topM, kind }) => topM < depthM && kind !== 'cap');
}

function insideUnknown(pieces: readonly PieceModel[]): Missing[] {
  const paths = pieces.filter(({ insideMm }) => insideMm === undefined).map(({ path }) => path);
  return [...new Set(paths)].map((path) => ({ what: 'pipeWall', path: `${path}.wall` }));
}

function judgePump(well: JudgedWell): Verdict {
  const { model, record } = well;
  if (!givesWater(record) || !model.pump || model.strings.length === 0) return notApplicable;
  const { bodyMm, intakeM, cylinderTopM } = model.pump;
  if (bodyMm === undefined) return unjudged({ what: 'pumpBody', path: 'pump.bodyDiameter' });
  const leastMm = figureOf(well, 'pumpRoomMm');
  const narrowest = (pieces: readonly PieceModel[]) =>
    pieces
      .filter(({ insideMm = -Infinity }) => insideMm >= bodyMm)
      .sort((a, b) => (a.insideMm ?? 0) - (b.insideMm ?? 0))
      .find(({ insideMm = 0 }) => isUnder(insideMm - bodyMm, leastMm));
  const lowestM = intakeM ?? cylinderTopM;
  const passed = passedBy(well, lowestM ?? Infinity);
  const tight = narrowest(passed);
  if (!tight) return judged([], insideUnknown(passed));
  if (lowestM === undefined) return unjudged({ what: 'pumpIntake', path: 'pump.intake' });
  const insideMm = tight.insideMm ?? 0;
  const values = { bodyMm, insideMm, roomMm: insideMm - bodyMm, leastMm };
  const stretch = { fromM: tight.topM, toM: tight.bottomM };
  return judged([broken('room.pump', 'warning', 'pump.bodyDiameter', values, stretch)]);
}

/**
 * The pump has room in the casing all the way down. One that is wider than the casing is said of
 * where the well is resolved.
 */
export const pumpRoom: Rule = { id: 'room.pump', figures: ['pumpRoomMm'], judge: judgePump };
