import type { LogInterval } from '../../record/log.ts';
import type { WellRecord } from '../../record/schema.ts';
import { layStrings, type LaidString } from '../laid/layPieces.ts';
import { loseTally } from '../laid/loseTally.ts';
import { inWords } from '../laid/words.ts';
import type { Losing } from '../losses.ts';
import { readPosition, type PositionRead } from '../points/position.ts';
import { reason } from '../reasons/reason.ts';
import { sayReason } from '../reasons/sayReason.ts';
import { fillCodes, groundCode, laidOut, methodCodes, pieceCodes, type Code } from './codes.ts';
import { writeDegrees } from './degrees.ts';
import { fieldsOf, fixed, type FieldsOf, type RowFields } from './holeText.ts';
import { screenRuns, type Range } from './screenRuns.ts';

/** A row of a group, with the codes that it uses by their headings. */
export interface HoleRow {
  readonly group: string;
  readonly fields: RowFields;
  readonly codes?: Readonly<Record<string, Code>>;
}

/** What is written of one hole, and how. */
interface Hole {
  readonly id: string;
  readonly record: WellRecord;
  readonly losing: Losing;
  readonly fields: FieldsOf;
}

function row(group: string, id: string, fields: RowFields, codes: Record<string, Code> = {}) {
  const coded = Object.fromEntries(Object.entries(codes).map(([key, { code }]) => [key, code]));
  return { group, fields: { LOCA_ID: id, ...fields, ...coded }, codes } satisfies HoleRow;
}

/**
 * The entries in order of depth, each with a key of its own: the first `keys` of the depths that
 * `depthsOf` gives. An entry without depths is left out.
 */
function keyed<T>(
  { losing }: Hole,
  path: string,
  list: readonly T[],
  depthsOf: (entry: T) => readonly number[] | undefined,
  keys: number,
): { entry: T; path: string }[] {
  const seen = new Set<string>();
  const kept = list.flatMap((entry, at) => {
    const depths = depthsOf(entry);
    const key = depths
      ?.slice(0, keys)
      .map((one) => fixed(one, 3))
      .join();
    if (depths === undefined || seen.has(key!)) return [];
    seen.add(key!);
    return [{ entry, path: `${path}[${at}]`, depths }];
  });
  const sorted = kept.toSorted(
    ({ depths: a }, { depths: b }) => a[0]! - b[0]! || (a[1] ?? 0) - (b[1] ?? 0),
  );
  if (kept.length < list.length || sorted.some((one, at) => one !== kept[at]))
    losing.lose(
      path,
      'Rows are in order of depth; one without thickness, or at the depths of another, is left out.',
    );
  return sorted;
}

/** Thickness that is left of an interval when its depths are rounded to the millimetre. */
const ranged = ({ from, to }: Range) =>
  Number(to.toFixed(3)) > Number(from.toFixed(3)) ? [from, to] : undefined;

function locaRow(hole: Hole): HoleRow {
  const {
    id,
    record,
    fields: { text, decimals },
  } = hole;
  const { site, bore, identity } = record;
  const place = placeOf(hole);
  const placed = place !== undefined && !('says' in place) ? place : undefined;
  return row(
    'LOCA',
    id,
    {
      LOCA_GL: decimals('site.elevation', site?.elevation, 3),
      LOCA_REM: text('bore.remark', bore?.remark),
      LOCA_FDEP: decimals('bore.depthReached', bore?.depthReached, 3),
      LOCA_STAR: bore?.startedOn,
      LOCA_PURP: text('identity.purpose', identity?.purpose),
      LOCA_ENDD: bore?.finishedOn,
      LOCA_DATM: text('site.elevationDatum', site?.elevationDatum),
      LOCA_LAT: placed ? writeDegrees(placed.latitude) : undefined,
      LOCA_LON: placed ? writeDegrees(placed.longitude) : undefined,
      LOCA_LLZ: placed ? 'WGS84' : undefined,
      LOCA_LOCM: text('site.positionMethod', site?.positionMethod),
      LOCA_LOCA: text('site.spot', site?.spot),
    },
    bore?.method === undefined ? {} : { LOCA_TYPE: methodCodes[bore.method] },
  );
}

/** What comes back of a position; undefined where it does not go out. */
function placeOf({ record: { site }, losing }: Hole): PositionRead | undefined {
  const { latitude, longitude } = site ?? {};
  if (latitude === undefined && longitude === undefined) return undefined;
  const place =
    latitude === undefined || longitude === undefined
      ? { says: reason('halfPosition') }
      : readPosition(Number(latitude.toFixed(9)), Number(longitude.toFixed(9)));
  for (const name of ['latitude', 'longitude'] as const) {
    if (site?.[name] === undefined) continue;
    if ('says' in place) losing.lose(`site.${name}`, sayReason(place.says, 'en'));
    else if (place[name] !== site[name])
      losing.lose(`site.${name}`, 'It is kept to nine decimals of a degree.');
  }
  return place;
}

function drillingRow({ id, record, fields: { text, decimals } }: Hole): HoleRow[] {
  const { bore, identity } = record;
  const { driller, contractor } = identity ?? {};
  const said = [bore?.method, bore?.rig, driller, contractor].some((one) => one !== undefined);
  if (!said) return [];
  const fields = {
    HDPH_TOP: '0.000',
    HDPH_BASE: decimals('bore.depthReached', bore?.depthReached, 3),
    HDPH_CREW: text('identity.driller', driller),
    HDPH_EXC: text('bore.rig', bore?.rig),
    HDPH_METH: bore?.method && inWords(bore.method),
    HDPH_CONT: text('identity.contractor', contractor),
  };
  return [row('HDPH', id, fields, bore?.method ? { HDPH_TYPE: methodCodes[bore.method] } : {})];
}

function diameterRows(hole: Hole): HoleRow[] {
  const {
    id,
    record,
    losing,
    fields: { decimals },
  } = hole;
  const sections = record.bore?.sections ?? [];
  const kept = keyed(hole, 'bore.sections', sections, ({ to }) => [to], 1);
  return kept.map(({ entry: { from, to, diameter }, path }, at) => {
    if (from !== (kept[at - 1]?.entry.to ?? 0))
      losing.lose(`${path}.from`, 'A diameter of HDIA begins where the one above ends.');
    return row('HDIA', id, {
      HDIA_DPTH: decimals(`${path}.to`, to, 3),
      HDIA_DIAM: decimals(`${path}.diameter`, diameter, 1),
    });
  });
}

/** What the fields tell, where nobody wrote a description. */
function describe({ consistency, colour, qualifiers, material, moisture }: LogInterval): string {
  const seconds = (qualifiers ?? []).map((one) => inWords(one.material));
  const name = material && inWords(material).toUpperCase();
  const withSeconds = seconds.length === 0 ? name : `${name} with ${seconds.join(' and ')}`;
  const wet = moisture && inWords(moisture);
  return [consistency, colour, withSeconds, wet].filter(Boolean).join(', ');
}

function logRows(hole: Hole): HoleRow[] {
  const {
    id,
    record,
    losing,
    fields: { text, decimals },
  } = hole;
  const said = (one: LogInterval) =>
    Boolean(one.material ?? (describe(one) || one.words?.trim() || one.remarks?.trim()));
  const kept = keyed(
    hole,
    'log',
    record.log ?? [],
    (one) => (said(one) ? ranged(one) : undefined),
    2,
  );
  return kept.map(({ entry, path }) => {
    const { from, to, material, words, remarks, qualifiers = [] } = entry;
    if (words === undefined)
      losing.lose(`${path}.words`, 'It comes back as the description that is made of the fields.');
    if (material === undefined)
      losing.lose(`${path}.material`, 'It comes back as what the description names.');
    if (material === undefined && qualifiers.length > 0)
      losing.lose(`${path}.qualifiers`, 'Second materials need a principal one.');
    const fields = {
      GEOL_TOP: decimals(`${path}.from`, from, 3),
      GEOL_BASE: decimals(`${path}.to`, to, 3),
      GEOL_DESC: text(`${path}.words`, words ?? describe(entry)),
      GEOL_REM: text(`${path}.remarks`, remarks),
    };
    const seconds = qualifiers.map((one) => one.material);
    return row('GEOL', id, fields, material ? { GEOL_LEG: groundCode(material, seconds) } : {});
  });
}

function sampleRows({ id, record, fields: { text, decimals } }: Hole): HoleRow[] {
  return (record.samples ?? []).map(({ from, to, label, remark }, at) => {
    const path = `samples[${at}]`;
    const fields = {
      SAMP_TOP: decimals(`${path}.from`, from, 3),
      SAMP_REF: text(`${path}.label`, label),
      SAMP_ID: `${id}-${at + 1}`,
      SAMP_BASE: decimals(`${path}.to`, to, 3),
      SAMP_REM: text(`${path}.remark`, remark),
    };
    return row('SAMP', id, fields, { SAMP_TYPE: laidOut });
  });
}

/** What a string is called in PIPE_REF: its name, or its number from 1 where it has none. */
function pipeRefs({ losing, fields: { text } }: Hole, strings: readonly LaidString[]): string[] {
  const names = strings.map(({ index, string }) => text(`strings[${index}].name`, string.name));
  return strings.map(({ index, string }, at) => {
    const name = names[at];
    const free = name !== undefined && name !== '' && names.indexOf(name) === at;
    if (free) return name;
    const ref = string.name === undefined ? `${index + 1}` : `${index + 1} ${name}`;
    losing.lose(`strings[${index}].name`, `It comes back as "${ref.trim()}".`);
    return ref.trim();
  });
}

/** The string whose water the levels are taken to be: the first one. */
interface Monitored {
  readonly ref: string;
  readonly screens: readonly Range[];
}

function pipeRows(hole: Hole): { rows: HoleRow[]; monitored: Monitored | undefined } {
  const {
    id,
    record,
    losing,
    fields: { text, decimals },
  } = hole;
  const strings = layStrings(record);
  loseTally(record, strings, losing);
  const refs = pipeRefs(hole, strings);
  const rows = strings.flatMap(({ index, pieces }, at) => {
    if (pieces.some(({ component }) => component.outside !== undefined))
      losing.lose(`strings[${index}].remark`, 'PIPE_DIAM does not say of which side it is.');
    return pieces.map(({ from, to, component, path }) => {
      const material = text(`${path}.material`, component.material);
      const fields = {
        PIPE_REF: refs[at],
        PIPE_TOP: decimals(`${path}.length`, from, 3),
        PIPE_BASE: decimals(`${path}.length`, to, 3),
        PIPE_DIAM: decimals(`${path}.outside`, component.outside, 1),
        PIPE_REM: text(`${path}.remark`, component.remark),
      };
      const cons = material ? { PIPE_CONS: { code: material, says: material } } : {};
      return row('PIPE', id, fields, { PIPE_TYPE: pieceCodes[component.kind], ...cons });
    });
  });
  const [first] = strings;
  const monitored = first && { ref: refs[0]!, screens: screenRuns(first.pieces) };
  return { rows, monitored };
}

function fillRows(hole: Hole): HoleRow[] {
  const {
    id,
    record,
    fields: { text, decimals },
  } = hole;
  const kept = keyed(hole, 'annulus', record.annulus ?? [], ranged, 1);
  return kept.map(({ entry: { from, to, fill, remark }, path }) => {
    const fields = {
      BKFL_TOP: decimals(`${path}.from`, from, 3),
      BKFL_BASE: decimals(`${path}.to`, to, 3),
      BKFL_DESC: inWords(fill),
      BKFL_REM: text(`${path}.remark`, remark),
    };
    return row('BKFL', id, fields, { BKFL_LEG: fillCodes[fill] });
  });
}

function strikeRows(hole: Hole): HoleRow[] {
  const {
    id,
    record,
    losing,
    fields: { text, decimals, moment },
  } = hole;
  const kept = keyed(hole, 'strikes', record.strikes ?? [], ({ depth }) => [depth], 1);
  return kept.flatMap(({ entry: { depth, at, rise, afterMinutes, remark }, path }) => {
    const key = { WSTG_DPTH: decimals(`${path}.depth`, depth, 3) };
    const fields = {
      ...key,
      WSTG_DTIM: moment(`${path}.at`, at),
      WSTG_REM: text(`${path}.remark`, remark),
    };
    if (rise === undefined || afterMinutes === undefined) {
      const why = 'WSTD tells a level together with the minutes after the strike.';
      if (rise !== undefined) losing.lose(`${path}.rise`, why);
      if (afterMinutes !== undefined) losing.lose(`${path}.afterMinutes`, why);
      return [row('WSTG', id, fields)];
    }
    const rose = {
      ...key,
      WSTD_NMIN: decimals(`${path}.afterMinutes`, afterMinutes, 2),
      WSTD_POST: decimals(`${path}.rise`, rise, 3),
    };
    return [row('WSTG', id, fields), row('WSTD', id, rose)];
  });
}

const levelCodes = {
  ground: { code: 'WDEP', says: 'Depth to water below ground' },
  casingTop: { code: 'WDEPC', says: 'Depth to water below the top of the casing' },
} as const;

/** The point where levels are read; its response zone is the screen, where it is a single one. */
function pointRow(id: string, point: RowFields, monitored: Monitored | undefined): HoleRow {
  const [screen, ...more] = monitored?.screens ?? [];
  const zone = screen && more.length === 0 ? ranged(screen) : undefined;
  const [top, base] = zone ?? [];
  return row('MONG', id, {
    ...point,
    PIPE_REF: monitored?.ref,
    MONG_TRZ: top === undefined ? undefined : fixed(top, 3),
    MONG_BRZ: base === undefined ? undefined : fixed(base, 3),
  });
}

function levelRows(
  { id, record, fields: { text, moment } }: Hole,
  monitored: Monitored | undefined,
): HoleRow[] {
  const levels = record.levels ?? [];
  if (levels.length === 0) return [];
  const point = { MONG_ID: '1', MONG_DIS: '0.00' };
  const rows = levels.map(({ at, reading, datum, state, remark }, index) => {
    const path = `levels[${index}]`;
    const fields = {
      ...point,
      MOND_DTIM: moment(`${path}.at`, at),
      MOND_REF: `${index + 1}`,
      MOND_RDNG: String(reading),
      MOND_UNIT: 'm',
      MOND_REM: [state, text(`${path}.remark`, remark)].filter(Boolean).join('; '),
    };
    return row('MOND', id, fields, { MOND_TYPE: levelCodes[datum] });
  });
  return [pointRow(id, point, monitored), ...rows];
}

/** All rows of one hole, group by group. */
export function holeRows(id: string, record: WellRecord, losing: Losing): HoleRow[] {
  const hole: Hole = { id, record, losing, fields: fieldsOf(losing) };
  const pipes = pipeRows(hole);
  return [
    locaRow(hole),
    ...drillingRow(hole),
    ...diameterRows(hole),
    ...logRows(hole),
    ...sampleRows(hole),
    ...pipes.rows,
    ...fillRows(hole),
    ...strikeRows(hole),
    ...levelRows(hole, pipes.monitored),
  ];
}
