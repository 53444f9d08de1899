import { nestStrings } from '../../../model/column.ts';
import { gapsIn, type Range } from '../../../model/range.ts';
import type { AnnulusZone, StringModel, WellModel } from '../../../model/wellModel.ts';
import { screenRuns, type ScreenRun } from '../../../model/screenRuns.ts';

/** The parts of a range at which no string stands further out than this one. */
function atWall(strings: readonly StringModel[], index: number, { fromM, toM }: Range): Range[] {
  const nested = nestStrings(strings);
  const outer = nested.slice(
    0,
    nested.findIndex((string) => string.index === index),
  );
  return gapsIn(
    outer.map(({ topM, bottomM }) => ({ fromM: topM, toM: bottomM })),
    fromM,
    toM,
  );
}

/** What stands next to the wall of the hole, from the top down; not what is inside pipes. */
export function wallZones({ annulus, strings }: WellModel): AnnulusZone[] {
  return annulus
    .filter(({ inside }) => inside === undefined)
    .flatMap((zone) =>
      zone.around === undefined
        ? [zone]
        : atWall(strings, zone.around, zone).map((part) => ({ ...zone, ...part })),
    )
    .sort((one, other) => one.fromM - other.fromM);
}

/** The screens that no other string stands round. */
export function wallScreens({ strings }: WellModel): ScreenRun[] {
  return strings
    .flatMap(screenRuns)
    .flatMap((screen) =>
      atWall(strings, screen.string, screen).map((part) => ({ ...screen, ...part })),
    );
}
