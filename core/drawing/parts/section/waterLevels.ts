import type { PaperMm } from '../../../base/units.ts';
import type { LevelModel, StringModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { black, dashed, solid, white } from '../../pens.ts';
import { shows, yAt } from '../../scale.ts';
import { group, line, polygon, type Point } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, halfOf, unknownHalf } from './across.ts';

/** The levels that the section shows: the latest at rest and the deepest while pumping. */
export function shownLevels(levels: readonly LevelModel[]): LevelModel[] {
  const rest = levels.filter(({ state }) => state === undefined || state === 'static').at(-1);
  const pumping = levels
    .filter(({ state }) => state === 'pumping')
    .reduce<LevelModel | undefined>(
      (deepest, one) => (deepest && deepest.depthM >= one.depthM ? deepest : one),
      undefined,
    );
  return [rest, pumping].filter((one) => one !== undefined);
}

/** The triangle of a water level, its point on the level; filled while pumping. */
export function levelSign([x, y]: Point, pumping: boolean, source?: string): Item[] {
  return [
    polygon(
      [
        [x, y],
        [x - 1.2, y - 2.1],
        [x + 1.2, y - 2.1],
      ],
      { fill: pumping ? black : white, stroke: solid('narrow'), source },
    ),
    line([x - 1.1, y + 0.8], [x + 1.1, y + 0.8], solid('thin'), source),
    line([x - 0.6, y + 1.5], [x + 0.6, y + 1.5], solid('thin'), source),
  ];
}

/** Half the inner width of what holds the water at a depth. */
function halfWidthAt(view: View, strings: readonly StringModel[], depthM: number): PaperMm {
  const insides = strings
    .flatMap(({ pieces }) => pieces)
    .filter(({ topM, bottomM }) => topM <= depthM && depthM <= bottomM)
    .map(({ insideMm, outsideMm }) => insideMm ?? outsideMm)
    .filter((one) => one !== undefined);
  return insides.length > 0 ? halfOf(view, Math.min(...insides)) : unknownHalf(view);
}

function drawLevel(view: View, strings: readonly StringModel[], level: LevelModel): Item[] {
  if (!shows(view.axis, level.depthM, view.first)) return [];
  const pumping = level.state === 'pumping';
  const half = halfWidthAt(view, strings, level.depthM);
  const y = yAt(view.axis, level.depthM);
  const centre = centreOf(view);
  const stroke = pumping ? dashed('narrow') : solid('narrow');
  const x = centre + (pumping ? 1 : -1) * half * 0.55;
  return [
    group(
      'level',
      [
        line([centre - half, y], [centre + half, y], stroke, level.path),
        ...levelSign([x, y], pumping, level.path),
      ],
      { source: level.path },
    ),
  ];
}

/** Water levels across the casing: at rest with an open triangle, pumping with a filled one. */
export function drawWaterLevels(
  levels: readonly LevelModel[],
  strings: readonly StringModel[],
  view: View,
): Item {
  return group(
    'waterLevels',
    shownLevels(levels).flatMap((one) => drawLevel(view, strings, one)),
  );
}
