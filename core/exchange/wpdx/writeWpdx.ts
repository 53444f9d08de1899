import type { WellRecord } from '../../record/schema.ts';
import type { Pump } from '../../record/headworks.ts';
import { csvLine } from '../csv/csvLine.ts';
import { losingOf, type Carried, type Losing } from '../losses.ts';
import type { OutgoingWell } from '../outgoing.ts';
import { readPosition } from '../points/position.ts';
import type { WellWriter, Writing } from '../writer.ts';
import { writtenColumns, type WrittenColumn } from './columns.ts';

type Cells = Partial<Record<WrittenColumn, string>>;

/** What a row of the standard holds of a record. */
export const carriedByWpdx: Carried = new Set([
  'schemaVersion',
  'identity.number',
  'identity.contractor',
  ...['latitude', 'longitude', 'country', 'region', 'district', 'commune'].map(
    (name) => `site.${name}`,
  ),
  'pump.model',
  'notes',
]);

const pumpWords: Readonly<Record<NonNullable<Pump['kind']>, string>> = {
  ropeAndWasher: 'Rope and washer pump',
  directAction: 'Hand pump, direct action',
  deepwellLever: 'Hand pump, deep well',
  extraDeepLever: 'Hand pump, extra deep well',
  suction: 'Hand pump, suction',
  electricSubmersible: 'Motor pump, electric',
  solarSubmersible: 'Motor pump, solar',
  bucketAndWindlass: 'Bucket and windlass',
  other: 'Other',
};

/** States of a well in which nobody draws water from it. */
const closed = ['dry', 'abandonedAndSealed', 'decommissioned'];

/** Water was there when it was pumped from the well; without a test nobody knows. */
function statusOf({ identity, tests = [] }: WellRecord): 'Yes' | 'No' | 'Unknown' {
  if (identity?.state !== undefined && closed.includes(identity.state)) return 'No';
  const pumped = tests.some(
    ({ kind, rate, series = [] }) =>
      kind !== 'recovery' && ((rate ?? 0) > 0 || series.some((one) => (one.rate ?? 0) > 0)),
  );
  return pumped ? 'Yes' : 'Unknown';
}

/** The last day on which somebody was at the well, as the record tells. */
function visitDay(record: WellRecord): string | undefined {
  const { bore, headworks, pump, levels = [], tests = [], quality = [] } = record;
  const moments = [
    ...[bore?.startedOn, bore?.finishedOn, headworks?.builtOn, pump?.installedOn],
    ...levels.map(({ at }) => at),
    ...tests.map(({ startedAt }) => startedAt),
    ...quality.map(({ takenAt }) => takenAt),
  ];
  const days = moments.filter((one) => one !== undefined).map((one) => one.slice(0, 10));
  return days.sort().at(-1);
}

/** Faecal coliforms, or Escherichia coli among them, of the latest sample that tells. */
function coliforms({ quality = [] }: WellRecord): Cells {
  const found = quality
    .toReversed()
    .flatMap(({ results = [] }) => results)
    .find(({ parameter, value }) => value !== undefined && /coli/i.test(parameter));
  if (!found || !/100 ?ml/i.test(found.unit ?? '')) return {};
  const absent = found.below === true || found.value === 0;
  return {
    fecal_coliform_presence: absent ? 'Absent' : 'Present',
    ...(found.below === true ? {} : { fecal_coliform_value: String(found.value) }),
  };
}

const present = (cells: Readonly<Record<string, string | undefined>>): Cells =>
  Object.fromEntries(Object.entries(cells).filter(([, text]) => text?.trim())) as Cells;

function cellsOf(record: WellRecord): Cells {
  const { identity, site, bore, pump, notes } = record;
  const { latitude, longitude } = site ?? {};
  const at =
    latitude === undefined || longitude === undefined
      ? undefined
      : readPosition(latitude, longitude);
  const placed = at !== undefined && !('sentence' in at);
  const kind = pump?.kind && pumpWords[pump.kind];
  return {
    ...coliforms(record),
    ...present({
      lat_deg: placed ? String(latitude) : undefined,
      lon_deg: placed ? String(longitude) : undefined,
      water_source: bore?.method === 'handDug' ? 'Dug Well' : 'Borehole/Tubewell',
      water_tech: pump?.model ?? kind,
      status_id: statusOf(record),
      report_date: visitDay(record),
      source: identity?.programme ?? identity?.client ?? identity?.contractor,
      country_name: site?.country,
      adm1: site?.region,
      adm2: site?.district,
      adm3: site?.commune,
      install_year: bore?.finishedOn?.slice(0, 4),
      installer: identity?.contractor,
      management: site?.committee?.name,
      scheme_id: identity?.number,
      notes,
    }),
  };
}

/** What the standard asks of every row, besides one of source and technology, which are there. */
const needed = ['lat_deg', 'lon_deg', 'report_date', 'source'] as const;

function loseChanged(record: WellRecord, { lose }: Losing): void {
  lose('notes', 'They come back with the words of the row, which the record has elsewhere.');
  const { identity, site, pump } = record;
  const texts = {
    'identity.number': identity?.number,
    'identity.contractor': identity?.contractor,
    'site.country': site?.country,
    'site.region': site?.region,
    'site.district': site?.district,
    'site.commune': site?.commune,
    'pump.model': pump?.model,
  };
  for (const [path, text] of Object.entries(texts))
    if (text !== undefined && (text !== text.trim() || text === ''))
      lose(path, 'A cell has no blanks at its ends.');
  if (pump?.model === undefined && pump?.kind !== undefined)
    lose('pump.model', 'It comes back as what the row calls the pump.');
  if (Object.keys(coliforms(record)).length > 0)
    lose('quality', 'One count of coliforms goes out.');
}

/** Writes wells as rows of the exchange standard; one that lacks what it asks for stays out. */
export function wpdxWriter({ name }: Writing): WellWriter {
  return {
    well({ record }: OutgoingWell) {
      const losing = losingOf(record, carriedByWpdx, 'A water point');
      const cells = cellsOf(record);
      const lacks = needed.filter((column) => cells[column] === undefined);
      if (lacks.length > 0) {
        const columns = lacks.map((one) => `#${one}`).join(', ');
        losing.lose('', `It does not go out: the record has nothing for ${columns}.`);
        return { added: [], losses: losing.losses };
      }
      loseChanged(record, losing);
      const content = csvLine(writtenColumns.map((column) => cells[column] ?? ''));
      return { added: [{ part: 'rows', content }], losses: losing.losses };
    },
    end: () => ({
      added: [{ part: 'head', content: csvLine(writtenColumns.map((column) => `#${column}`)) }],
      files: [{ name: `${name}-wpdx.csv`, parts: ['head', 'rows'] }],
    }),
  };
}
