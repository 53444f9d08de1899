import type { DepthM } from '../../../base/units.ts';

/** A stretch of the well on one page. */
export interface Range {
  readonly fromM: DepthM;
  readonly toM: DepthM;
}

/** The roundest depth in a range that is near the wish; the range's end where none is round. */
function roundCut(wished: DepthM, leastM: DepthM, mostM: DepthM, nearM: number): DepthM {
  for (const step of [10, 5, 1, 0.5]) {
    const near = Math.min(Math.round(wished / step), Math.floor(mostM / step + 1e-9)) * step;
    if (near >= leastM && near <= mostM + 1e-9 && Math.abs(near - wished) <= Math.min(step, nearM))
      return near;
  }
  return mostM;
}

const mostPages = 8;

/** How much paper leads to a depth, in metres of its scale, and back. Breaks make it shorter. */
export interface Along {
  of(depthM: DepthM): number;
  depthAt(along: number): DepthM;
}

const unbroken: Along = { of: (depthM) => depthM, depthAt: (along) => along };

/**
 * Cuts a well into pages that have room for `fullM`, the last for `lastM`, metres of paper.
 * Undefined when it takes too many.
 */
export function cut(
  top: DepthM,
  foot: DepthM,
  fullM: number,
  lastM: number,
  along = unbroken,
): Range[] | undefined {
  if (lastM <= 0 || fullM <= 0) return undefined;
  const [fromM, toM] = [along.of(top), along.of(foot)];
  const pages = 1 + Math.max(1, Math.ceil((toM - fromM - lastM) / fullM - 1e-9));
  if (pages > mostPages) return undefined;
  // Every page shows some of the well, also where it is hardly longer than one page.
  const someM = Math.min(lastM, fullM, (toM - fromM) / pages / 4);
  const ranges: Range[] = [];
  let [at, from] = [fromM, top];
  for (let left = pages - 1; left > 0; left -= 1) {
    const leastM = Math.max(toM - lastM - (left - 1) * fullM, at + someM);
    const mostM = Math.min(at + fullM, toM - left * someM);
    const [wished, least, most] = [mostM, leastM, mostM].map(along.depthAt);
    const end = roundCut(wished!, least!, most!, fullM / 8);
    ranges.push({ fromM: from, toM: end });
    [at, from] = [along.of(end), end];
  }
  return [...ranges, { fromM: from, toM: foot }];
}
