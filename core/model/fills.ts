import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { AnnulusFill } from '../record/annulus.ts';
import type { StringModel } from './wellModel.ts';
import type { WellCell } from './column.ts';
import { found, type Resolved } from './findings.ts';
import { covers, cut, liesWithin } from './range.ts';
import { readRanges, type Placed } from './readRanges.ts';

export type Fill = Placed<AnnulusFill>;

/** Where in a cell a fill can stand: round a string, in a string, or in the hole as such. */
export type Space =
  { readonly kind: 'around' | 'inside'; readonly string: number } | { readonly kind: 'hole' };

export function sameSpace(a: Space, b: Space): boolean {
  if (a.kind === 'hole' || b.kind === 'hole') return a.kind === b.kind;
  return a.kind === b.kind && a.string === b.string;
}

/** The fills with their ranges cut to the hole; what is cut or left out is said. */
export function readFills(
  annulus: readonly AnnulusFill[],
  depthM: DepthM | undefined,
): Resolved<Fill[]> {
  const read = readRanges('annulus', 'annulus', annulus);
  const findings: Finding[] = [...read.findings];
  const value = read.value.flatMap((fill) => {
    const { fromM, toM, path } = fill;
    const kind = fill.entry.fill;
    if (fromM < 0)
      findings.push(
        found('annulus.aboveGround', path, { fill: kind }, { fromM, toM: Math.min(toM, 0) }),
      );
    if (depthM !== undefined && toM > depthM)
      findings.push(
        found(
          'annulus.belowHole',
          path,
          { fill: kind, depthM },
          { fromM: Math.max(fromM, depthM), toM },
        ),
      );
    const range = cut(fill, 0, depthM ?? Infinity);
    return range ? [{ ...fill, ...range }] : [];
  });
  return { value, findings };
}

/**
 * Of two fills at one place: one that lies wholly in the other is kept; else the one that
 * reaches deeper, since it stood there first and its top was sounded before the next was poured.
 */
export function preferFill(one: Fill, other: Fill): Fill {
  if (liesWithin(other, one)) return other;
  if (liesWithin(one, other)) return one;
  return other.toM > one.toM ? other : one;
}

/**
 * Where a fill stands in a cell that it covers. Its own string comes first. Where that does not
 * reach, the fill stands next to the wall: round the outermost string there, or in the bare
 * hole. Above the top of a string that hangs in another one there is nothing to stand in.
 */
export function spaceOf(
  fill: Fill,
  cell: WellCell,
  strings: readonly StringModel[],
): Space | undefined {
  const innermost = cell.pipes.at(-1);
  if (!innermost) return { kind: 'hole' };
  if (fill.entry.insideHole) return { kind: 'inside', string: innermost.string.index };
  const index = fill.entry.around ?? 0;
  if (cell.pipes.some(({ string }) => string.index === index))
    return { kind: 'around', string: index };
  const own = strings.find((string) => string.index === index);
  if (own && cell.toM <= own.topM) return undefined;
  return { kind: 'around', string: cell.pipes[0]?.string.index ?? index };
}

/** What is odd about where a fill is said to stand. */
export function checkFill(
  fill: Fill,
  cells: readonly WellCell[],
  strings: readonly StringModel[],
  label: (index: number) => string | number,
): Finding[] {
  const { path, entry } = fill;
  const index = entry.around ?? 0;
  const findings: Finding[] = [];
  if (entry.around !== undefined && !strings.some((string) => string.index === index))
    findings.push(
      found(
        'annulus.noSuchString',
        `${path}.around`,
        { fill: entry.fill, string: index + 1 },
        fill,
      ),
    );
  const spaces = cells
    .filter((cell) => covers(fill, cell))
    .map((cell) => spaceOf(fill, cell, strings));
  if (spaces.includes(undefined))
    findings.push(
      found('annulus.aboveString', path, { fill: entry.fill, string: label(index) }, fill),
    );
  const inside = spaces.find((space) => space?.kind === 'inside');
  if (inside && inside.kind !== 'hole')
    findings.push(
      found(
        'annulus.insideString',
        `${path}.insideHole`,
        { fill: entry.fill, string: label(inside.string) },
        fill,
      ),
    );
  return findings;
}
