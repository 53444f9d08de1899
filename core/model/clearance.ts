import type { Finding } from '../base/finding.ts';
import type { Millimetres } from '../base/units.ts';
import type { PipeAt, WellCell } from './column.ts';
import { found } from './findings.ts';
import { joinLaid, type Laid } from './range.ts';

/** A pipe that cannot stand in what it is said to stand in, over a stretch. */
interface Jam {
  readonly string: number;
  /** The string that it stands in; absent where that is the hole. */
  readonly outer?: number;
  readonly sizeMm: Millimetres;
  readonly roomMm: Millimetres;
  /**
   * Exact: the pipe's outside against the room. Else a wall is not known, and the pipe is wider
   * than `sizeMm`, its inside, or the room narrower than `roomMm`, the outer's outside.
   */
  readonly exact: boolean;
  readonly path: string;
}

/** A width as recorded, or the nearest that bounds it. */
interface Width {
  readonly mm: Millimetres;
  readonly exact: boolean;
}

function width(
  exactMm: Millimetres | undefined,
  boundMm: Millimetres | undefined,
): Width | undefined {
  if (exactMm !== undefined) return { mm: exactMm, exact: true };
  return boundMm === undefined ? undefined : { mm: boundMm, exact: false };
}

/**
 * A pipe no wider than its room may stand in it. Where a wall is not known, equal sizes already
 * cannot: two pipes of one outside diameter do not go one into the other, whatever their walls.
 */
function jamOf(pipe: PipeAt, room: Width | undefined, outer?: PipeAt): Jam[] {
  const size = width(pipe.outsideMm, pipe.insideMm);
  if (size === undefined || room === undefined) return [];
  const exact = size.exact && room.exact;
  if (exact ? size.mm <= room.mm : size.mm < room.mm) return [];
  const { index, path } = pipe.string;
  return [
    {
      string: index,
      ...(outer ? { outer: outer.string.index } : {}),
      sizeMm: size.mm,
      roomMm: room.mm,
      exact,
      path,
    },
  ];
}

function jamsIn({ pipes, boreMm, fromM, toM }: WellCell): Laid<Jam>[] {
  return pipes
    .flatMap((pipe, at) => {
      const outer = pipes[at - 1];
      return outer
        ? jamOf(pipe, width(outer.insideMm, outer.outsideMm), outer)
        : jamOf(pipe, width(boreMm, undefined));
    })
    .map((item) => ({ fromM, toM, item }));
}

function sameJam(a: Jam, b: Jam): boolean {
  return (
    a.string === b.string &&
    a.outer === b.outer &&
    a.sizeMm === b.sizeMm &&
    a.roomMm === b.roomMm &&
    a.exact === b.exact
  );
}

function byString(a: Laid<Jam>, b: Laid<Jam>): number {
  return a.item.string - b.item.string || a.fromM - b.fromM;
}

type Label = (index: number) => string | number;

function inHole({ item, ...range }: Laid<Jam>, label: Label): Finding {
  const { path, exact, sizeMm, roomMm: holeMm } = item;
  const string = label(item.string);
  return exact
    ? found('string.widerThanHole', path, { string, outsideMm: sizeMm, holeMm }, range)
    : found('string.insideWiderThanHole', path, { string, insideMm: sizeMm, holeMm }, range);
}

function inOuter({ item, ...range }: Laid<Jam>, outer: string | number, label: Label): Finding {
  const { path, exact, sizeMm, roomMm } = item;
  const string = label(item.string);
  if (!exact) return found('string.noRoomInOuter', path, { string, outer, sizeMm, roomMm }, range);
  const values = { string, outer, outsideMm: sizeMm, insideMm: roomMm };
  return found('string.widerThanOuter', path, values, range);
}

/** Where a string is wider than the hole or than the string that it stands in. */
export function checkClearance(cells: readonly WellCell[], label: Label): Finding[] {
  return joinLaid(cells.flatMap(jamsIn).sort(byString), sameJam).map((jam) =>
    jam.item.outer === undefined ? inHole(jam, label) : inOuter(jam, label(jam.item.outer), label),
  );
}
