import { csvLine } from '../csv/csvLine.ts';
import { tableKinds } from '../tables/fields.ts';
import type { WellWriter, Writing } from '../writer.ts';
import { mappingOf } from './columns.ts';
import { tableWriter } from './tableWriter.ts';

/** By this mark some spreadsheets know UTF-8. */
const mark = '\uFEFF';

/**
 * Writes wells as a set of tables, one file for each kind of row, and the mapping that reads them
 * back. With `bom` each table begins with the mark of UTF-8.
 */
export function csvWriter({ name, bom = false }: Writing & { readonly bom?: boolean }): WellWriter {
  const tables = tableWriter({
    format: 'A set of tables',
    lineOf: (cells) => csvLine(cells.map((cell) => (cell === undefined ? '' : String(cell)))),
  });
  return {
    well: tables.well,
    end() {
      const { written, combined } = tables.soFar;
      const fileOf = (kind: string) => `${name}-${kind}.csv`;
      const mapping = mappingOf(written, (kind) => ({ file: fileOf(kind) }), combined);
      const kinds = tableKinds.filter((kind) => written.has(kind));
      return {
        added: [
          { part: 'mark', content: bom ? mark : '' },
          { part: 'mapping', content: `${JSON.stringify(mapping, null, 2)}\n` },
        ],
        files: [
          ...kinds.map((kind) => ({ name: fileOf(kind), parts: ['mark', kind] })),
          { name: `${name}-mapping.json`, parts: ['mapping'] },
        ],
      };
    },
  };
}
