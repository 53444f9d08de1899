import { ok, type Result } from '../../base/result.ts';
import { known } from '../../base/known.ts';
import type { GivenFile, Incoming } from '../incoming.ts';
import { wellFrom, type WellFrom } from '../laid/recordFrom.ts';
import { nested } from '../points/nested.ts';
import { readPosition } from '../points/position.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { decode } from '../tables/decode.ts';
import { readRows, type Row } from '../tables/rows.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import { columnName, fieldColumns, numberColumns, visitColumns } from './columns.ts';

/** The cells of one row by the names of the columns; empty ones are absent. */
interface Visit {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

/** Commas, semicolons or tabs: whichever stands most often in the heading. */
function delimiterOf(text: string): string {
  const [heading = ''] = text.split(/\r?\n/, 1);
  const count = (mark: string) => heading.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

/** Whether a table has the columns that every file of the standard has. */
export function holdsWpdx({ bytes }: GivenFile): boolean {
  const [heading = ''] = decode(bytes.subarray(0, 8192)).text.split(/\r?\n/, 1);
  const names = heading
    .replace(/^\uFEFF/, '')
    .split(delimiterOf(heading))
    .map((one) => columnName(one.replaceAll('"', '')));
  return ['lat_deg', 'lon_deg', 'status_id', 'report_date'].every((name) => names.includes(name));
}

function visitOf({ line, cells }: Row, names: readonly string[]): Visit {
  const pairs = names.flatMap((name, at) => {
    const text = cells[at]?.trim() ?? '';
    return text === '' ? [] : [[name, text] as const];
  });
  return { line, cells: new Map(pairs) };
}

/** The words of a visit as they stand, for the notes. */
function noteOf({ cells }: Visit): string {
  const said = visitColumns.flatMap((name) => {
    const text = cells.get(name);
    return text === undefined ? [] : [`#${name} ${text}`];
  });
  return said.join('; ');
}

/** Springs and rain are water points too, but nobody drilled them. */
const notWells = /spring|rain|surface|river|stream|lake|dam\b|tanker|sand filter/i;

interface Told {
  readonly say: (column: string, says: Reason) => void;
}

function positionOf({ cells }: Visit, { say }: Told) {
  const [lat, lon] = [cells.get('lat_deg'), cells.get('lon_deg')];
  const position =
    lat === undefined || lon === undefined
      ? { says: reason('noPosition') }
      : readPosition(Number(lat), Number(lon));
  if (!('says' in position)) return position;
  say('lat_deg', position.says);
  return {};
}

/** Counted in 100 ml, as the standard has it (unit from memory). */
function coliformsOf({ cells }: Visit, { say }: Told) {
  const written = cells.get('fecal_coliform_value');
  if (written === undefined) return {};
  const value = Number(written);
  if (Number.isFinite(value) && value >= 0)
    return {
      quality: [{ results: [{ parameter: 'Faecal coliforms', value, unit: 'per 100 ml' }] }],
    };
  say('fecal_coliform_value', reason('notCount', { text: written }));
  return {};
}

function wellOf(file: string, visits: readonly Visit[], number: string | undefined): WellFrom {
  const [first] = visits;
  const { line, cells } = first!;
  const lost: TableTrouble[] = [];
  const say = (column: string, says: Reason) =>
    void lost.push({ file, line, column, ...told(says), kept: true });
  const source = cells.get('water_source') ?? '';
  if (notWells.test(source)) say('water_source', reason('notAWell', { source }));
  const texts = Object.entries(fieldColumns).flatMap(([name, path]) => {
    const text = cells.get(name);
    return text === undefined ? [] : [[path, text] as const];
  });
  const {
    site = {},
    identity = {},
    ...rest
  } = nested(texts) as {
    site?: object;
    identity?: object;
  };
  const country = cells.has('country_name') ? {} : known({ country: cells.get('country_id') });
  const own = cells.get('notes');
  const notes = [own, ...visits.map(noteOf)].filter(Boolean).join('\n');
  const { well, troubles } = wellFrom(
    {
      identity: { ...known({ number }), ...identity },
      site: { ...country, ...site, ...positionOf(first!, { say }) },
      ...rest,
      ...coliformsOf(first!, { say }),
      ...(notes === '' ? {} : { notes }),
    },
    { file, line },
  );
  return { well, troubles: [...lost, ...troubles] };
}

/** Rows that name the same point, in the order of first sight; a row without a name stands alone. */
function byPoint(visits: readonly Visit[]): (readonly [string | undefined, Visit[]])[] {
  const points = new Map<string, readonly [string | undefined, Visit[]]>();
  for (const visit of visits) {
    const column = numberColumns.find((name) => visit.cells.has(name));
    const number = column && visit.cells.get(column);
    const key = number === undefined ? `line ${visit.line}` : `number ${number}`;
    const point = points.get(key);
    if (point) point[1].push(visit);
    else points.set(key, [number, [visit]]);
  }
  return [...points.values()];
}

const taken = new Set<string>([
  ...['lat_deg', 'lon_deg', 'country_id', 'notes', 'fecal_coliform_value'],
  ...visitColumns,
  ...numberColumns,
  ...Object.keys(fieldColumns),
]);

function leftOut(file: string, names: readonly string[], visits: readonly Visit[]) {
  const left = names.filter(
    (name) => name !== '' && !taken.has(name) && visits.some(({ cells }) => cells.has(name)),
  );
  if (left.length === 0) return [];
  const says = told(reason('columnsLeft', { columns: left.join(', ') }));
  return [{ file, line: 1, column: left[0]!, ...says, kept: true }];
}

/**
 * Water points of the exchange standard as wells: one a point, its visits in the notes, in the words
 * of the file. Whether a point works is never made of them.
 */
export function readWpdx({ name, bytes }: GivenFile): Result<Incoming> {
  const { text } = decode(bytes);
  const { heading, rows, broken } = readRows(text, delimiterOf(text));
  const names = heading.map(columnName);
  const visits = rows.map((row) => visitOf(row, names));
  const wells = byPoint(visits).map(([number, own]) => wellOf(name, own, number));
  const cut = broken
    ? [{ file: name, line: broken.line, column: '', kept: false, ...told(broken.says) }]
    : [];
  return ok({
    wells: wells.map(({ well }) => well),
    troubles: [...leftOut(name, names, visits), ...wells.flatMap((one) => one.troubles), ...cut],
  });
}
