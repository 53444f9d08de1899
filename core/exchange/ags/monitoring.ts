import type { AnnulusFill } from '../../record/annulus.ts';
import { joinedStrings } from '../laid/readStrings.ts';
import type { Piece } from '../tables/joinPieces.ts';
import type { Cells } from './cells.ts';
import type { SaidByFile } from './fileWords.ts';
import { isSameRange, screenRuns, type Range } from './screenRuns.ts';

/** What else is known of the hole in which a point monitors. */
interface Around {
  readonly pieces: readonly Piece[];
  readonly fills: readonly AnnulusFill[];
}

interface Points {
  /** Response zones of standpipes in a hole of which no other group tells where water comes in. */
  readonly fills: readonly AnnulusFill[];
  /** What points say that the record has no field for. */
  readonly notes: readonly string[];
}

/** Standpipe and standpipe piezometer, as the ABBR groups of tests/data/ags4 call them. */
const standpipes = ['SP', 'SPIE'];

const pointName = (cells: Cells) =>
  ['Monitoring point', cells.text('MONG_ID')].filter(Boolean).join(' ');

function zoneOf(cells: Cells): Range | undefined {
  const [from, to] = [cells.metres('MONG_TRZ'), cells.metres('MONG_BRZ')];
  return from !== undefined && to !== undefined && to > from ? { from, to } : undefined;
}

/** The response zone in words, also where its depths are half said or upside down. */
function sayZone(cells: Cells): string | undefined {
  const [from, to] = [cells.metres('MONG_TRZ'), cells.metres('MONG_BRZ')];
  if (from === undefined && to === undefined) return undefined;
  return `response zone ${from ?? '?'} to ${to ?? '?'} m`;
}

function noteOf(cells: Cells, said: SaidByFile, sayItsZone: boolean): string | undefined {
  const [type, depth] = [cells.text('MONG_TYPE'), cells.metres('MONG_DIS')];
  const pipe = cells.text('PIPE_REF');
  const parts = [
    type && (said('MONG_TYPE', type) ?? type),
    cells.text('MONG_DETL'),
    depth && `at ${depth} m`,
    sayItsZone ? sayZone(cells) : undefined,
    cells.day('MONG_DATE'),
    cells.text('MONG_REM'),
  ].filter(Boolean);
  if (parts.length === 0) return undefined;
  return `${pointName(cells)}${pipe === undefined ? '' : ` in pipe ${pipe}`}: ${parts.join(', ')}`;
}

/**
 * The rows of MONG. A response zone that a screen or a fill already has is said by it; that of a
 * standpipe is a pack where the hole has neither a screen nor fills; others stand in the notes.
 */
export function pointsOf(
  rows: readonly Cells[],
  said: SaidByFile,
  { pieces, fills }: Around,
): Points {
  const screens = joinedStrings(pieces).flatMap((one) => screenRuns(one.pieces));
  const isSilent = screens.length === 0 && fills.length === 0;
  const packs: AnnulusFill[] = [];
  const notes = rows.map((cells) => {
    const zone = zoneOf(cells);
    const known = [...screens, ...fills, ...packs].some((one) => zone && isSameRange(one, zone));
    const isPack = isSilent && standpipes.includes(cells.text('MONG_TYPE') ?? '');
    if (!known && zone && isPack)
      packs.push({
        ...zone,
        fill: 'gravelPack',
        remark: `Response zone of ${pointName(cells).toLowerCase()}`,
      } as AnnulusFill);
    return noteOf(cells, said, !(known || (zone && isPack)));
  });
  return { fills: packs, notes: notes.filter((one) => one !== undefined) };
}

/** Which point a reading is of, where the hole has several. */
export function pointOfReading(cells: Cells, points: readonly Cells[]): string | undefined {
  const ids = new Set(points.map((one) => one.text('MONG_ID')));
  return ids.size > 1 && cells.text('MONG_ID') !== undefined ? pointName(cells) : undefined;
}
