import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import {
  readMapping,
  readTables,
  type TableMapping,
  type TablesRead,
} from '../../core/exchange/index.ts';
import type { WellRecord } from '../../core/record/schema.ts';

const data = path.resolve(import.meta.dirname, '../data');

interface RealSet {
  /** Folder under tests/data that holds the tables. */
  readonly folder: string;
  /** Folder that holds the mapping, where several sets share one. */
  readonly mapping: string;
  /** Who published it; licences stand in tests/data/README.md. */
  readonly source: string;
}

const britishFiles = ['2370644', 'a112794-14', 'fettercairn-sa05', 'hindley-mill-fra01'];

const sets: readonly RealSet[] = [
  set('ngis-lithology', 'Bureau of Meteorology, National Groundwater Information System'),
  ...britishFiles.map((file) => ({
    ...set(`ags4/${file}`, 'British Geological Survey'),
    mapping: 'ags4',
  })),
  set('south-australia', 'Department for Environment and Water, South Australia'),
  set('gwml2-usgs', 'U.S. Geological Survey'),
  set('gwml2-bom', 'Bureau of Meteorology, National Groundwater Information System'),
  set('dov-flanders', 'Databank Ondergrond Vlaanderen'),
];

function set(folder: string, source: string): RealSet {
  return { folder, mapping: folder, source };
}

export interface RealWell {
  /** Folder of the set and number of the well. */
  readonly name: string;
  readonly source: string;
  readonly record: WellRecord;
}

export interface RealTables extends TablesRead {
  readonly folder: string;
  readonly source: string;
  readonly mapping: TableMapping;
  readonly files: readonly { readonly name: string; readonly text: string }[];
}

function readSet({ folder, mapping: mappingFolder, source }: RealSet): RealTables {
  const text = readFileSync(path.join(data, mappingFolder, 'mapping.json'), 'utf8');
  const mapping = readMapping(JSON.parse(text));
  if (!mapping.ok) throw new Error(`${folder}: ${mapping.error.sentence}`);
  const names = new Set(mapping.value.tables.map(({ file }) => file));
  const files = [...names]
    .filter((name) => existsSync(path.join(data, folder, name)))
    .map((name) => ({ name, text: readFileSync(path.join(data, folder, name), 'utf8') }));
  const read = readTables(files, mapping.value);
  return { folder, source, mapping: mapping.value, files, ...read };
}

/** Every set of real tables, read. */
export function realTables(): RealTables[] {
  return sets.map(readSet);
}

/** Every real well of the open data under tests/data. */
export function realWells(): RealWell[] {
  return realTables().flatMap(({ folder, source, records }) =>
    records.map((record) => ({ name: `${folder} ${record.identity!.number!}`, source, record })),
  );
}
