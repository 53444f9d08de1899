import { ok, refused, type Result } from '../../base/result.ts';
import { known } from '../../base/known.ts';
import type { GivenFile, Incoming } from '../incoming.ts';
import { stringsFrom } from '../laid/readStrings.ts';
import { wellFrom, withoutEmpty, type WellFrom } from '../laid/recordFrom.ts';
import { readPosition } from '../points/position.ts';
import { reason } from '../reasons/reason.ts';
import { decode } from '../tables/decode.ts';
import type { Piece } from '../tables/joinPieces.ts';
import type { TableTrouble } from '../tables/trouble.ts';
import { cellsOf, type Cells } from './cells.ts';
import { leftOpen, methodOf } from './codes.ts';
import { readDegrees } from './degrees.ts';
import { withCasings } from './drillingCasing.ts';
import { abbreviationsOf, type SaidByFile } from './fileWords.ts';
import { fillRowOf, intervalOf, levelOf, pieceOf, sampleOf, strikeOf } from './holeRows.ts';
import { pointOfReading, pointsOf } from './monitoring.ts';
import { readGroups, type AgsGroups } from './readGroups.ts';
import { leftOut } from './takenHeadings.ts';

/** All rows of one hole, by group, in the order of the file. */
interface Hole {
  readonly id: string;
  readonly line: number;
  rows(group: string): readonly Cells[];
}

const present = <T>(list: readonly (T | undefined)[]): T[] =>
  list.filter((one) => one !== undefined);
const byDepth = (a: { from: number; to: number }, b: { from: number; to: number }) =>
  a.from - b.from || a.to - b.to;

/** Holes of LOCA first, then holes that other groups name and LOCA does not. */
function holesOf(file: string, { groups }: AgsGroups, troubles: TableTrouble[]): Hole[] {
  const holes = new Map<string, { line: number; rows: Map<string, Cells[]> }>();
  const inOrder = [...groups.values()].sort(
    (a, b) => Number(b.name === 'LOCA') - Number(a.name === 'LOCA'),
  );
  for (const group of inOrder)
    for (const row of group.rows) {
      const id = row.cells.get('LOCA_ID') ?? '';
      if (id === '') continue;
      const hole = holes.get(id) ?? { line: row.line, rows: new Map<string, Cells[]>() };
      holes.set(id, hole);
      const rows = hole.rows.get(group.name) ?? [];
      hole.rows.set(group.name, [...rows, cellsOf(file, group, row, troubles)]);
    }
  return [...holes].map(([id, { line, rows }]) => ({
    ...{ id, line },
    rows: (group) => rows.get(group) ?? [],
  }));
}

type Project = (heading: string) => string | undefined;

function projectOf({ groups }: AgsGroups): Project {
  const row = groups.get('PROJ')?.rows[0];
  return (heading) => {
    const text = row?.cells.get(heading) ?? '';
    return text === '' || leftOpen.includes(text) ? undefined : text;
  };
}

function identityOf(hole: Hole, project: Project) {
  const [loca] = hole.rows('LOCA');
  const said = (heading: string) => present(hole.rows('HDPH').map((row) => row.text(heading)))[0];
  return {
    number: hole.id,
    ...known({
      programme: project('PROJ_NAME'),
      contract: project('PROJ_ID'),
      client: project('PROJ_CLNT'),
      contractor: said('HDPH_CONT') ?? project('PROJ_CONT'),
      driller: said('HDPH_CREW'),
      supervisor: project('PROJ_ENG'),
      purpose: loca?.text('LOCA_PURP'),
    }),
  };
}

/** Latitude and longitude count only on WGS 84, or where the file does not say of which datum. */
function positionOf(loca: Cells) {
  const datum = loca.text('LOCA_LLZ');
  const [lat, lon] = [loca.text('LOCA_LAT'), loca.text('LOCA_LON')];
  if (lat === undefined || lon === undefined) return {};
  if (datum !== undefined && !/^wgs[ -]?84$/i.test(datum)) {
    loca.tell('LOCA_LLZ', reason('otherDatum', { datum }), true);
    return {};
  }
  const [latitude, longitude] = [readDegrees(lat), readDegrees(lon)];
  const position =
    latitude === undefined || longitude === undefined
      ? { says: reason('notDegrees', { latitude: lat, longitude: lon }) }
      : readPosition(latitude, longitude);
  if (!('says' in position)) return position;
  loca.tell('LOCA_LAT', position.says, true);
  return {};
}

function siteOf(hole: Hole) {
  const [loca] = hole.rows('LOCA');
  if (!loca) return {};
  return {
    ...positionOf(loca),
    ...known({
      spot: loca.text('LOCA_LOCA'),
      positionMethod: loca.text('LOCA_LOCM'),
      elevation: loca.metres('LOCA_GL'),
      elevationDatum: loca.text('LOCA_DATM'),
    }),
  };
}

/** Each diameter of HDIA reaches down to its depth from the depth of the one above. */
function sectionsOf(hole: Hole) {
  const rows = present(
    hole.rows('HDIA').map((row) => {
      const [to, diameter] = [row.metres('HDIA_DPTH'), row.millimetres('HDIA_DIAM')];
      return to === undefined || diameter === undefined ? undefined : { to, diameter };
    }),
  ).sort((a, b) => a.to - b.to);
  return rows.map((row, at) => ({ from: rows[at - 1]?.to ?? 0, ...row }));
}

function boreOf(hole: Hole, casings: string | undefined) {
  const [loca] = hole.rows('LOCA');
  const drilling = hole.rows('HDPH');
  const method = methodOf(
    drilling[0]?.text('HDPH_METH'),
    drilling[0]?.text('HDPH_TYPE') ?? loca?.text('LOCA_TYPE'),
  );
  const sections = sectionsOf(hole);
  const remark = present([loca?.text('LOCA_REM'), casings]).join('; ');
  return {
    ...known({ method, rig: drilling[0]?.text('HDPH_EXC') }),
    ...known({ startedOn: loca?.day('LOCA_STAR'), finishedOn: loca?.day('LOCA_ENDD') }),
    ...known({ depthReached: loca?.metres('LOCA_FDEP'), remark: remark || undefined }),
    ...(sections.length === 0 ? {} : { sections }),
  };
}

/** A row of water strikes without a depth tells in its remark that no water came. */
function notesOf(hole: Hole, points: readonly string[]): string | undefined {
  const said = hole
    .rows('WSTG')
    .filter((row) => row.text('WSTG_DPTH') === undefined)
    .map((row) => row.text('WSTG_REM'));
  return [...present(said), ...points].join('; ') || undefined;
}

function wellOf(file: string, hole: Hole, project: Project, said: SaidByFile): WellFrom {
  const [loca] = hole.rows('LOCA');
  if (!loca) {
    const [group] = ['GEOL', 'PIPE', 'BKFL'].filter((name) => hole.rows(name).length > 0);
    hole.rows(group ?? '')[0]?.tell('LOCA_ID', reason('noLoca', { well: hole.id }), true);
  }
  const piped = present<Piece>(hole.rows('PIPE').map((row) => pieceOf(row, said)));
  const { pieces, remark } = withCasings(piped, hole.rows('CDIA'));
  const filled = present(hole.rows('BKFL').map((row) => fillRowOf(row, said)));
  const monitored = hole.rows('MONG');
  const points = pointsOf(monitored, said, { pieces, fills: filled });
  const rises = hole.rows('WSTD');
  const chapters = {
    identity: identityOf(hole, project),
    site: siteOf(hole),
    bore: boreOf(hole, remark),
    samples: present(hole.rows('SAMP').map(sampleOf)),
    log: present(hole.rows('GEOL').map((row) => intervalOf(row, said))).sort(byDepth),
    strings: stringsFrom(pieces),
    annulus: [...filled, ...points.fills].sort(byDepth),
    levels: present(hole.rows('MOND').map((row) => levelOf(row, pointOfReading(row, monitored)))),
    strikes: present(hole.rows('WSTG').map((row) => strikeOf(row, rises))),
    notes: notesOf(hole, points.notes),
  };
  return wellFrom(withoutEmpty(chapters), { file, line: hole.line });
}

const startOf = ({ bytes }: GivenFile) => decode(bytes.subarray(0, 200)).text;

/** AGS 3 marks the name of a group with two stars, `"**PROJ"`, and has no row that says GROUP. */
const isAgs3 = (file: GivenFile) => /^\s*"\*\*\??\w+"/.test(startOf(file));

/** Whether a file is of AGS, whose first line opens a group. */
export function holdsAgs(file: GivenFile): boolean {
  return /^\s*"GROUP"\s*,/.test(startOf(file)) || isAgs3(file);
}

const byLine = (a: TableTrouble, b: TableTrouble) => a.line - b.line;

/**
 * Holes of an AGS 4 file as wells: one of each LOCA. Units are those of the UNIT rows, codes those
 * of the file's ABBR group. Groups and headings without a place in a record are told once.
 */
export function readAgs(file: GivenFile): Result<Incoming> {
  const { name, bytes } = file;
  if (isAgs3(file))
    return refused(
      'ags3',
      `${name} is AGS 3, and only AGS 4 is read. Ask for it as AGS 4, or save its groups as tables ` +
        '(CSV, XLSX) and say what their columns mean.',
    );
  const read = readGroups(name, decode(bytes).text);
  const troubles: TableTrouble[] = [...read.troubles, ...leftOut(name, read)];
  const holes = holesOf(name, read, troubles);
  if (holes.length === 0)
    return refused(
      'agsNoHoles',
      `${name} is an AGS file without a hole: none of its rows has a LOCA_ID. Ask for a file with ` +
        'the group LOCA.',
    );
  const [project, said] = [projectOf(read), abbreviationsOf(read)];
  const wells = holes.map((hole) => wellOf(name, hole, project, said));
  return ok({
    wells: wells.map(({ well }) => well),
    troubles: [...troubles, ...wells.flatMap((one) => one.troubles)].sort(byLine),
  });
}
