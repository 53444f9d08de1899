import type { Finding } from '../base/finding.ts';
import type { Millimetres } from '../base/units.ts';
import type { PipeAt, WellCell } from './column.ts';
import { found } from './findings.ts';
import { joinLaid, type Laid } from './range.ts';

/** A pipe that is wider than what it stands in, over a stretch. */
interface Jam {
  readonly string: number;
  /** The string that it stands in; absent where that is the hole. */
  readonly outer?: number;
  readonly outsideMm: Millimetres;
  readonly roomMm: Millimetres;
  readonly path: string;
}

function jamOf(pipe: PipeAt, roomMm: Millimetres | undefined, outer?: PipeAt): Jam[] {
  if (pipe.outsideMm === undefined || roomMm === undefined || pipe.outsideMm <= roomMm) return [];
  const { index, path } = pipe.string;
  return [
    {
      string: index,
      ...(outer ? { outer: outer.string.index } : {}),
      outsideMm: pipe.outsideMm,
      roomMm,
      path,
    },
  ];
}

function jamsIn({ pipes, boreMm, fromM, toM }: WellCell): Laid<Jam>[] {
  return pipes
    .flatMap((pipe, at) => {
      const outer = pipes[at - 1];
      return outer ? jamOf(pipe, outer.insideMm, outer) : jamOf(pipe, boreMm);
    })
    .map((item) => ({ fromM, toM, item }));
}

function sameJam(a: Jam, b: Jam): boolean {
  return a.string === b.string && a.outer === b.outer && a.roomMm === b.roomMm;
}

function byString(a: Laid<Jam>, b: Laid<Jam>): number {
  return a.item.string - b.item.string || a.fromM - b.fromM;
}

/** Where a string is wider than the hole or than the string that it stands in. */
export function checkClearance(
  cells: readonly WellCell[],
  label: (index: number) => string | number,
): Finding[] {
  return joinLaid(cells.flatMap(jamsIn).sort(byString), sameJam).map(({ fromM, toM, item }) => {
    const { string, outer, outsideMm, roomMm, path } = item;
    return outer === undefined
      ? found(
          'string.widerThanHole',
          path,
          { string: label(string), outsideMm, holeMm: roomMm },
          { fromM, toM },
        )
      : found(
          'string.widerThanOuter',
          path,
          { string: label(string), outer: label(outer), outsideMm, insideMm: roomMm },
          { fromM, toM },
        );
  });
}
