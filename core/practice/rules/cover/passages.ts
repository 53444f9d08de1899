import type { RecordPath } from '../../../base/recordPath.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import type { Range } from '../../../model/range.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { FillKind } from '../../../record/annulus.ts';
import { isPack, isUnrecorded } from './annulusRuns.ts';
import { wallScreens, wallZones } from './wall.ts';

/** What lets water along the wall of the hole. */
export interface Conduit extends Range {
  readonly kind: FillKind | 'screen' | 'unrecorded';
  readonly path: RecordPath;
}

/** Conduits that follow on each other without a seal between. */
export interface Passage extends Range {
  readonly conduits: readonly Conduit[];
}

function conduitsOf(model: WellModel): Conduit[] {
  const zones = wallZones(model)
    .filter((zone) => isPack(zone) || isUnrecorded(zone) || zone.fill === 'open')
    .map(({ fromM, toM, fill: kind, path = 'annulus' }) => ({ fromM, toM, kind, path }));
  const screens = wallScreens(model).map(({ fromM, toM, path }): Conduit => ({
    fromM,
    toM,
    kind: 'screen',
    path,
  }));
  return [...zones, ...screens].sort((one, other) => one.fromM - other.fromM);
}

function passagesOf(conduits: readonly Conduit[]): Passage[] {
  const passages: Passage[] = [];
  for (const conduit of conduits) {
    const last = passages.at(-1);
    if (last && conduit.fromM - last.toM <= tapeToleranceM)
      passages[passages.length - 1] = {
        fromM: last.fromM,
        toM: Math.max(last.toM, conduit.toM),
        conduits: [...last.conduits, conduit],
      };
    else passages.push({ fromM: conduit.fromM, toM: conduit.toM, conduits: [conduit] });
  }
  return passages;
}

/** Passages through pack, open annulus and screens: those that the record tells. */
export function certainPassages(model: WellModel): Passage[] {
  return passagesOf(conduitsOf(model).filter(({ kind }) => kind !== 'unrecorded'));
}

/** The same, taking for open what nobody wrote of. */
export function possiblePassages(model: WellModel): Passage[] {
  return passagesOf(conduitsOf(model));
}
