import { known } from '../../base/known.ts';
import type { Site } from '../../record/site.ts';
import type { PlacedSurrounding, SitingPlan } from '../results.ts';

type Rows = NonNullable<Site['surroundings']>;
type Row = Rows[number] & { readonly path: string };

function place(
  { kind, slope, path }: Row,
  distanceM: number,
  directionDegrees: number,
): PlacedSurrounding {
  const radians = (directionDegrees * Math.PI) / 180;
  return {
    path,
    kind,
    ...known({ slope }),
    distanceM,
    directionDegrees,
    eastM: distanceM * Math.sin(radians),
    northM: distanceM * Math.cos(radians),
  };
}

/**
 * Where things stand, in metres east and north of the well, from their distance and their
 * direction clockwise from true north. What lacks either is told apart and stands nowhere.
 */
export function sitingPlan(site: Site | undefined): SitingPlan {
  const rows: Row[] = (site?.surroundings ?? []).map((one, at) => ({
    ...one,
    path: `site.surroundings[${at}]`,
  }));
  const placed = rows.flatMap((row) => {
    const { distance, direction } = row;
    if (distance === undefined) return [];
    if (direction !== undefined) return [place(row, distance, direction)];
    return distance === 0 ? [place(row, 0, 0)] : [];
  });
  const isPlaced = (path: string) => placed.some((one) => one.path === path);
  const reachM = Math.max(...placed.map(({ distanceM }) => distanceM));
  return {
    placed,
    withoutDirection: rows.flatMap(({ path, kind, distance }) =>
      distance === undefined || isPlaced(path) ? [] : [{ path, kind, distanceM: distance }],
    ),
    withoutDistance: rows.flatMap(({ path, kind, distance }) =>
      distance === undefined ? [{ path, kind }] : [],
    ),
    ...(placed.length > 0 ? { reachM } : {}),
  };
}
