/** Formats that wells go out in, what holds most of them first. */
export const writtenFormats = [
  'json',
  'jsonl',
  'csv',
  'xlsx',
  'ags',
  'gwml',
  'geojson',
  'wpdx',
] as const;

export type WrittenFormat = (typeof writtenFormats)[number];
