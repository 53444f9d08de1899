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

/** Cuts a length into pages of `fullM`, the last of `lastM`. Undefined when it takes too many. */
export function cut(fromM: DepthM, toM: DepthM, fullM: number, lastM: number): Range[] | undefined {
  if (lastM <= 0 || fullM <= 0) return undefined;
  const pages = 1 + Math.max(1, Math.ceil((toM - fromM - lastM) / fullM - 1e-9));
  if (pages > mostPages) return undefined;
  const share = (toM - fromM) / (fullM * (pages - 1) + lastM);
  // Every page shows some of the well, also where it is hardly longer than one page.
  const someM = Math.min(lastM, fullM, (toM - fromM) / pages / 4);
  const ranges: Range[] = [];
  let at = fromM;
  for (let left = pages - 1; left > 0; left -= 1) {
    const leastM = Math.max(toM - lastM - (left - 1) * fullM, at + someM);
    const mostM = Math.min(at + fullM, toM - left * someM);
    const end = roundCut(at + share * fullM, leastM, mostM, (share * fullM) / 3);
    ranges.push({ fromM: at, toM: end });
    at = end;
  }
  return [...ranges, { fromM: at, toM }];
}
