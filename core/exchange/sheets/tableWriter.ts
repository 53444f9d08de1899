import type { WellRecord } from '../../record/schema.ts';
import { losingOf, nameOf, type Losing } from '../losses.ts';
import type { OutgoingWell } from '../outgoing.ts';
import type { TableKind } from '../tables/fields.ts';
import type { Added, WrittenWell } from '../writer.ts';
import { carriedBySheets, columnsOf, wellColumn } from './columns.ts';
import { sheetRows, type SheetCell, type SheetRow } from './rows.ts';

/** How a kind of file takes rows. */
export interface RowForm {
  readonly format: string;
  /** Figures of a number that a cell keeps; all where absent. */
  readonly figures?: number;
  lineOf(cells: readonly SheetCell[], kind: TableKind): string;
}

/** What the wells gave so far. */
export interface TablesSoFar {
  readonly written: ReadonlySet<TableKind>;
  /** Cells that name second materials. */
  readonly combined: ReadonlySet<string>;
}

export interface TableWriter {
  readonly soFar: TablesSoFar;
  well(one: OutgoingWell): WrittenWell;
}

/** A key that no other well of the tables has. */
function freeKey(record: WellRecord, taken: Set<string>, { lose }: Losing): string {
  const wanted = nameOf(record).trim().replace(/\r\n?/g, '\n') || 'well';
  for (let at = 1; ; at++) {
    const key = at === 1 ? wanted : `${wanted} (${at})`;
    if (taken.has(key)) continue;
    taken.add(key);
    if (record.identity?.number === undefined)
      lose('identity.number', `It comes back as "${key}", by which the rows belong together.`);
    return key;
  }
}

/** Turns wells into rows of tables, each headed when its first row comes. */
export function tableWriter(form: RowForm): TableWriter {
  const taken = new Set<string>();
  const written = new Set<TableKind>();
  const combined = new Set<string>();

  function addRow(key: string, { kind, cells }: SheetRow): Added[] {
    const columns = columnsOf(kind);
    const headings = [wellColumn, ...columns.map(({ heading }) => heading)];
    const head = written.has(kind) ? [] : [{ part: kind, content: form.lineOf(headings, kind) }];
    written.add(kind);
    const { qualifiers } = cells;
    if (kind === 'log' && typeof qualifiers === 'string') combined.add(qualifiers);
    const content = form.lineOf([key, ...columns.map(({ name }) => cells[name])], kind);
    return [...head, { part: kind, content }];
  }

  return {
    soFar: { written, combined },
    well({ record }) {
      const losing = losingOf(record, carriedBySheets, form.format);
      const key = freeKey(record, taken, losing);
      const rows = sheetRows(record, losing, form.figures);
      return { added: rows.flatMap((row) => addRow(key, row)), losses: losing.losses };
    },
  };
}
