/**
 * Columns of the water point data exchange standard. Names with the mark that the standard puts
 * before them, `#lat_deg`; older files lack it. Collected from public extracts and the standard's
 * own pages (waterpointdata.org, "Share your data with WPDx in 30 minutes or less" and "Announcing
 * the WPdx MEAL Guide"); meanings without a published sentence are from memory.
 */

/** As they are written, in this order. */
export const writtenColumns = [
  'lat_deg',
  'lon_deg',
  'water_source',
  'water_tech',
  'status_id',
  'status',
  'report_date',
  'source',
  'country_name',
  'adm1',
  'adm2',
  'adm3',
  'install_year',
  'installer',
  'management',
  'scheme_id',
  'fecal_coliform_presence',
  'fecal_coliform_value',
  'notes',
] as const;

export type WrittenColumn = (typeof writtenColumns)[number];

/** Names that older files use. */
export const oldNames: Readonly<Record<string, string>> = {
  long_deg: 'lon_deg',
  data_link: 'data_lnk',
  orig_link: 'orig_lnk',
  photo_link: 'photo_lnk',
  instal_year: 'install_year',
};

/** What a visit saw or was told; kept as written, in the well's notes. */
export const visitColumns = [
  ...['report_date', 'source', 'water_source', 'status_id', 'status', 'install_year'],
  ...['management', 'pay', 'rehab_year', 'rehabilitator', 'subjective_quality'],
  ...['fecal_coliform_presence', 'activity_id', 'orig_lnk', 'photo_lnk', 'data_lnk'],
] as const;

/** Text columns that have a field of their own in a record. */
export const fieldColumns: Readonly<Record<string, string>> = {
  country_name: 'site.country',
  adm1: 'site.region',
  adm2: 'site.district',
  adm3: 'site.commune',
  installer: 'identity.contractor',
  water_tech: 'pump.model',
};

/** Columns that lead to the number of a well, the best first. */
export const numberColumns = ['scheme_id', 'activity_id', 'wpdx_id', 'row_id'] as const;

/** A heading as it is looked up: small, without the mark, by its present name. */
export function columnName(heading: string): string {
  const plain = heading.trim().toLowerCase().replace(/^#/, '');
  return oldNames[plain] ?? plain;
}
