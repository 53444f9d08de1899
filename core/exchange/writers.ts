import { agsWriter } from './ags/writeAgs.ts';
import { geoJsonWriter } from './geojson/writeGeoJson.ts';
import { gwmlWriter } from './gwml/writeGwml.ts';
import { jsonLinesWriter, jsonWriter } from './json/writeJson.ts';
import { csvWriter } from './sheets/writeCsv.ts';
import { xlsxWriter } from './sheets/writeXlsx.ts';
import { wpdxWriter } from './wpdx/writeWpdx.ts';
import type { WellWriter, Writing } from './writer.ts';
import type { WrittenFormat } from './writtenFormats.ts';

export interface WritingWish extends Writing {
  /** Tables of text begin with the mark by which some spreadsheets know UTF-8. */
  readonly bom?: boolean;
}

const makers: Readonly<Record<WrittenFormat, (wish: WritingWish) => WellWriter>> = {
  json: jsonWriter,
  jsonl: jsonLinesWriter,
  csv: csvWriter,
  xlsx: xlsxWriter,
  ags: agsWriter,
  gwml: gwmlWriter,
  geojson: geoJsonWriter,
  wpdx: wpdxWriter,
};

/** A writer of a format, for one set of files. */
export function writerOf(format: WrittenFormat, wish: WritingWish): WellWriter {
  return makers[format](wish);
}
