import { headed } from '../tables/rows.ts';
import { columnsNeeded } from '../tables/readTables.ts';
import { writingOf } from '../tables/cells.ts';
import type { MappedTable, TableMapping } from '../tables/mapping.ts';
import type { TableSource } from '../tables/source.ts';

function hasColumns(source: TableSource, mapped: MappedTable, mapping: TableMapping): boolean {
  const { heading } = headed(
    source.rows({
      encoding: mapped.encoding ?? mapping.encoding,
      delimiter: mapped.delimiter ?? mapping.delimiter,
      decimal: writingOf(mapping, mapped).decimal,
    }),
    mapped.headingLine,
  );
  return columnsNeeded(mapped).every((column) => heading.includes(column));
}

/** The table of the same name, else the only one that has all columns. */
function sourceFor(mapped: MappedTable, mapping: TableMapping, sources: readonly TableSource[]) {
  const fitting = sources.filter((source) => hasColumns(source, mapped, mapping));
  const named = fitting.find(({ name, sheet }) => name === mapped.file && sheet === mapped.sheet);
  return named ?? (fitting.length === 1 ? fitting[0] : undefined);
}

/**
 * A mapping made for other files of the same form, led to these by their headings; undefined where
 * one of its tables has no headings here that fit, or several have.
 */
export function fitMapping(
  mapping: TableMapping,
  sources: readonly TableSource[],
): TableMapping | undefined {
  const tables = mapping.tables.map((mapped) => {
    const source = sourceFor(mapped, mapping, sources);
    if (!source) return undefined;
    const rest = { ...mapped };
    delete rest.sheet;
    return { ...rest, file: source.name, ...(source.sheet ? { sheet: source.sheet } : {}) };
  });
  const found = tables.filter((table) => table !== undefined);
  return found.length === tables.length ? { ...mapping, tables: found } : undefined;
}
