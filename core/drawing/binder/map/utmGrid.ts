import { gridPlace, type GridPlace } from '../../../base/geo/utm.ts';
import type { Metres } from '../../../base/units.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import { letter } from '../../letters.ts';
import { letterings, solid } from '../../pens.ts';
import { group, line, type Point } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { tick } from './grid.ts';
import { fromPaper, isOnMap, type MapView } from './view.ts';

/** The grid of a map: its zone, and the step of its lines. */
export interface UtmGrid {
  readonly zone: number;
  readonly half: 'N' | 'S';
  readonly stepM: Metres;
}

const mostLines = 5;

function placeOn(view: MapView, point: Point): GridPlace | undefined {
  const [longitude, latitude] = fromPaper(view, point);
  return gridPlace({ latitude, longitude });
}

/** The grid of the middle of a map; undefined beyond its reach. */
export function utmGridOf(view: MapView): UtmGrid | undefined {
  const { x, y, width, height } = view.box;
  const middle = placeOn(view, [x + width / 2, y + height / 2]);
  if (!middle) return undefined;
  const spanM = (Math.max(width, height) * view.scale) / 1000;
  const power = 10 ** Math.floor(Math.log10(spanM / mostLines));
  const times = [1, 2, 5, 10].find((one) => one * power * mostLines >= spanM * (1 - 1e-9))!;
  return { zone: middle.zone, half: middle.half, stepM: times * power };
}

type Axis = 'eastingM' | 'northingM';

/** Rounds are enough: on a map the grid is nearly straight. */
const rounds = 6;
const near: Metres = 0.5;

/**
 * Where some eastings and northings meet on the paper, found from a first guess by going the way
 * that is still left; undefined in another zone, whose lines run otherwise.
 */
function meeting(
  view: MapView,
  grid: UtmGrid,
  wanted: Readonly<Partial<Record<Axis, Metres>>>,
  from: Point,
): Point | undefined {
  let point = from;
  for (let round = 0; round < rounds; round += 1) {
    const there = placeOn(view, point);
    if (!there || there.zone !== grid.zone || there.half !== grid.half) return undefined;
    const left = (axis: Axis) => (wanted[axis] === undefined ? 0 : wanted[axis] - there[axis]);
    const [east, north] = [left('eastingM'), left('northingM')];
    if (Math.abs(east) < near && Math.abs(north) < near) return point;
    const mm = 1000 / view.scale;
    point = [point[0] + east * mm, point[1] - north * mm];
  }
  return undefined;
}

function multiples(from: Metres, to: Metres, step: Metres): Metres[] {
  const first = Math.ceil(from / step);
  return Array.from(
    { length: Math.max(0, Math.floor(to / step) - first + 1) },
    (_, at) => (first + at) * step,
  );
}

function cross([x, y]: Point): Item[] {
  const arm = 1.3;
  return [
    line([x - arm, y], [x + arm, y], solid('thin')),
    line([x, y - arm], [x, y + arm], solid('thin')),
  ];
}

const samples = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

/** Places all over a map that lie in its zone: near the edge of a zone not all of them do. */
function placesSeen(view: MapView, { zone, half }: UtmGrid): GridPlace[] {
  const { x, y, width, height } = view.box;
  return samples.flatMap((across) =>
    samples.flatMap((down) => {
      const place = placeOn(view, [x + across * width, y + down * height]);
      return place?.zone === zone && place.half === half ? place : [];
    }),
  );
}

/** Crosses where the lines of the grid meet, and their kilometres at the lower and right edge. */
export function drawUtmGrid(kit: BinderKit, view: MapView, grid: UtmGrid): Item {
  const { box } = view;
  const [right, foot] = [box.x + box.width, box.y + box.height];
  const { stepM } = grid;
  const seen = placesSeen(view, grid);
  const span = (axis: Axis) => {
    const values = seen.map((place) => place[axis]);
    return values.length === 0 ? [] : multiples(Math.min(...values), Math.max(...values), stepM);
  };
  const [eastings, northings] = [span('eastingM'), span('northingM')];
  const km = (metres: Metres, side: string) => `${plainFigure(kit, metres / 1000, 3)} km ${side}`;
  const middle: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const crosses = eastings.flatMap((eastingM) =>
    northings.flatMap((northingM) => {
      const point = meeting(view, grid, { eastingM, northingM }, middle);
      return point && isOnMap(box, point) ? cross(point) : [];
    }),
  );
  const acrossFoot = eastings.flatMap((eastingM): Item[] => {
    const point = meeting(view, grid, { eastingM }, [middle[0], foot]);
    if (!point || !isOnMap(box, point)) return [];
    const [x] = point;
    return [
      line([x, foot], [x, foot + tick], solid('thin')),
      ...letter(kit, km(eastingM, kit.words.compass.east), x, foot + tick + 2.5, {
        anchor: 'middle',
      }),
    ];
  });
  const downRight = northings.flatMap((northingM): Item[] => {
    const point = meeting(view, grid, { northingM }, [right, middle[1]]);
    if (!point || !isOnMap(box, point)) return [];
    const [, y] = point;
    return [
      line([right, y], [right + tick, y], solid('thin')),
      ...letter(kit, km(northingM, kit.words.compass.north), right + tick + 0.6, y + letterings.small / 2), // prettier-ignore
    ];
  });
  return group('utmGrid', [...crosses, ...acrossFoot, ...downRight]);
}
