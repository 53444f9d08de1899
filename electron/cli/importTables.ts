import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import {
  readMapping,
  readTables,
  type TableFile,
  type TableMapping,
} from '../../core/exchange/index.ts';
import { misused, textOption, type Command, type World } from './command.ts';
import { parseJson, readBytes, textOf } from './readInput.ts';
import { uniqueNames } from '../files/uniqueNames.ts';

function readMappingFile(file: string, world: World): Result<TableMapping> {
  const bytes = readBytes(file, world);
  if (!bytes.ok) return bytes;
  const json = parseJson(textOf(bytes.value), file);
  return json.ok ? readMapping(json.value) : json;
}

function readTableFiles(files: readonly string[], world: World): Result<readonly TableFile[]> {
  const tables: TableFile[] = [];
  for (const file of files) {
    const bytes = readBytes(file, world);
    if (!bytes.ok) return bytes;
    tables.push({ name: path.basename(file), text: textOf(bytes.value) });
  }
  return ok(tables);
}

/** A file's name for a record: its number, of letters and digits that every system takes. */
function fileName({ identity }: WellRecord, at: number): string {
  const number = (identity?.number ?? '').replace(/[^\p{L}\p{N}._-]+/gu, '-');
  return `${number || `well-${at + 1}`}.json`;
}

function writeRecords(records: readonly WellRecord[], folder: string): void {
  mkdirSync(folder, { recursive: true });
  const names = uniqueNames(records.map(fileName));
  records.forEach((record, at) =>
    writeFileSync(path.join(folder, names[at]!), `${JSON.stringify(record, null, 2)}\n`),
  );
}

/** `import-tables`: records from tables of wells, by a mapping of columns to fields. */
export const importTables: Command = {
  name: 'import-tables',
  takes: 'MAPPING.json TABLE.csv … -o FOLDER',
  says: 'Reads tables of wells into one record a well; a row that cannot be read is named by line',
  options: { output: { type: 'string', short: 'o' } },
  run(given, world) {
    const [mappingFile, ...files] = given.words;
    const output = textOption(given, 'output');
    if (mappingFile === undefined || files.length === 0 || output === undefined)
      return misused(
        'Name the mapping, one or more tables, and a folder: import-tables MAPPING.json TABLE.csv -o FOLDER.',
      );
    const mapping = readMappingFile(mappingFile, world);
    if (!mapping.ok) return mapping;
    const tables = readTableFiles(files, world);
    if (!tables.ok) return tables;
    const { records, troubles } = readTables(tables.value, mapping.value);
    writeRecords(records, path.resolve(world.folder, output));
    for (const { file, line, column, sentence } of troubles)
      world.complain(`${file}:${line}${column ? ` ${column}` : ''}: ${sentence}`);
    world.report(
      { written: output, records: records.length, troubles },
      `${records.length} records in ${output}, ${troubles.length} rows with trouble`,
    );
    return ok(troubles.length > 0 ? 1 : 0);
  },
};
