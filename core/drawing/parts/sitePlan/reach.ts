/** Half the side of plans that are offered, metres. */
const reaches = [25, 50, 100, 200, 400, 800];
/** What stands nearer matters most; what lies farther is shown at the edge until it is asked for. */
const usualM = 100;

/** Reaches to choose from, up to the first that holds all. */
export function reachesFor(farthestM: number): readonly number[] {
  const last = reaches.findIndex((reach) => reach >= farthestM);
  return reaches.slice(0, last < 0 ? undefined : last + 1);
}

/** The reach that a plan begins with. */
export function usualReach(farthestM: number): number {
  return (
    reachesFor(farthestM)
      .filter((reach) => reach <= usualM)
      .at(-1) ?? usualM
  );
}

/** Radii of the rings round the well: two inside the plan, at half and all of its reach. */
export function ringsOf(reachM: number): readonly number[] {
  return [reachM / 2, reachM];
}
