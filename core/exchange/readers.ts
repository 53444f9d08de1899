import type { Result } from '../base/result.ts';
import { holdsAgs, readAgs } from './ags/readAgs.ts';
import { holdsDov, readDov } from './dov/readDov.ts';
import { holdsGeoJson, readGeoJson } from './geojson/readGeoJson.ts';
import { holdsGwml, readGwml } from './gwml/readGwml.ts';
import type { GivenFile, Incoming } from './incoming.ts';
import { holdsRecords, readJson } from './json/readJson.ts';
import { holdsMarkup, refuseOther } from './other/refuseOther.ts';
import { holdsWpdx, readWpdx } from './wpdx/readWpdx.ts';

/** Reads files that say by themselves what each of their fields means. */
export interface RecordReader {
  readonly format: string;
  /** Whether a file is of this format, by its content, and by its name where that says more. */
  fits(file: GivenFile): boolean;
  /** Refuses a file that cannot be read at all; single troubles are in what it answers. */
  read(file: GivenFile): Result<Incoming> | Promise<Result<Incoming>>;
}

/** The first that fits reads a file. */
export const recordReaders: readonly RecordReader[] = [
  { format: 'json', fits: holdsRecords, read: readJson },
  { format: 'ags', fits: holdsAgs, read: readAgs },
  { format: 'geojson', fits: holdsGeoJson, read: readGeoJson },
  { format: 'gwml', fits: holdsGwml, read: readGwml },
  { format: 'dov', fits: holdsDov, read: readDov },
  { format: 'wpdx', fits: holdsWpdx, read: readWpdx },
  { format: 'other', fits: holdsMarkup, read: refuseOther },
];

/** The reader of a file; undefined where it is a table, or nothing that is known. */
export function recordReaderFor(file: GivenFile): RecordReader | undefined {
  return recordReaders.find(({ fits }) => fits(file));
}
