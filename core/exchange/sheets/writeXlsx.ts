import { zipSync, type Zippable } from 'fflate';
import type { OutgoingWell } from '../outgoing.ts';
import { bytesOf } from '../encode.ts';
import { nameOf } from '../losses.ts';
import { tableKinds, type TableKind } from '../tables/fields.ts';
import type { WellWriter, WrittenWell, Writing } from '../writer.ts';
import { element, opening, type Markup } from '../xml/writeXml.ts';
import { mappingOf } from './columns.ts';
import type { SheetCell } from './rows.ts';
import { tableWriter } from './tableWriter.ts';

/**
 * Workbooks of Office Open XML (ECMA-376, parts 1 and 2, from memory): one sheet a table, texts in the
 * cells themselves. A text cell is never run, whatever it begins with.
 */
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships';
const contentTypes = 'http://schemas.openxmlformats.org/package/2006/content-types';
const types = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** Rows of a sheet at most (common practice: 2 to the 20th). */
export const mostRows = 1_048_576;

/** Figures that a spreadsheet keeps of a number. */
const figures = 15;

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** `A` to `Z`, then `AA`: what a column is called. */
function columnName(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26));
  return at < 26 ? letter : `${columnName(Math.floor(at / 26) - 1)}${letter}`;
}

function cellMarkup(cell: SheetCell, r: string): Markup[] {
  if (cell === undefined || cell === '') return [];
  if (typeof cell === 'number') return [element('c', { r }, [element('v', {}, String(cell))])];
  const text = element('t', { 'xml:space': 'preserve' }, cell);
  return [element('c', { r, t: 'inlineStr' }, [element('is', {}, [text])])];
}

function rowMarkup(cells: readonly SheetCell[], row: number): string {
  const written = cells.flatMap((cell, at) => cellMarkup(cell, `${columnName(at)}${row}`));
  return element('row', { r: String(row) }, written).markup;
}

function sheetMarkup(rows: readonly string[]): string {
  const head = element('sheetViews', {}, [
    element('sheetView', { workbookViewId: '0' }, [
      element('pane', {
        ySplit: '1',
        topLeftCell: 'A2',
        activePane: 'bottomLeft',
        state: 'frozen',
      }),
    ]),
  ]).markup;
  const body = `<sheetData>${rows.join('')}</sheetData>`;
  return `${declaration}${opening('worksheet', { xmlns: main })}${head}${body}</worksheet>`;
}

const relation = (id: string, type: string, target: string) =>
  element('Relationship', { Id: id, Type: `${relations}/${type}`, Target: target });

const document = (root: Markup) => `${declaration}${root.markup}`;

/** The files of a workbook that lead to its sheets. */
function frameOf(sheets: readonly string[]): Record<string, string> {
  const override = (part: string, type: string) =>
    element('Override', { PartName: part, ContentType: `${types}.${type}+xml` });
  const xml = { Extension: 'xml', ContentType: 'application/xml' };
  const rels = {
    Extension: 'rels',
    ContentType: 'application/vnd.openxmlformats-package.relationships+xml',
  };
  const listed = sheets.map((name, at) =>
    element('sheet', { name, sheetId: `${at + 1}`, 'r:id': `rId${at + 1}` }),
  );
  return {
    '[Content_Types].xml': document(
      element('Types', { xmlns: contentTypes }, [
        element('Default', rels),
        element('Default', xml),
        override('/xl/workbook.xml', 'sheet.main'),
        ...sheets.map((_, at) => override(`/xl/worksheets/sheet${at + 1}.xml`, 'worksheet')),
      ]),
    ),
    '_rels/.rels': document(
      element('Relationships', { xmlns: packageRelations }, [
        relation('rId1', 'officeDocument', 'xl/workbook.xml'),
      ]),
    ),
    'xl/workbook.xml': document(
      element('workbook', { xmlns: main, 'xmlns:r': relations }, [element('sheets', {}, listed)]),
    ),
    'xl/_rels/workbook.xml.rels': document(
      element(
        'Relationships',
        { xmlns: packageRelations },
        sheets.map((_, at) =>
          relation(`rId${at + 1}`, 'worksheet', `worksheets/sheet${at + 1}.xml`),
        ),
      ),
    ),
  };
}

/** The same bytes for the same sheets: the day in the archive is a fixed one. */
const packedOn = '1980-01-01T12:00:00';

function workbookOf(sheets: ReadonlyMap<TableKind, readonly string[]>): Uint8Array {
  const kinds = tableKinds.filter((kind) => sheets.has(kind));
  const files: Record<string, string> = frameOf(kinds);
  kinds.forEach((kind, at) => {
    files[`xl/worksheets/sheet${at + 1}.xml`] = sheetMarkup(sheets.get(kind)!);
  });
  const packed: Zippable = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [name, bytesOf([text])] as const),
  );
  return zipSync(packed, { mtime: packedOn });
}

/**
 * Writes wells as one workbook with a sheet for each kind of row, and the mapping that reads it
 * back. A workbook is whole in memory, and a sheet has 1 048 576 rows: a well for which there is no
 * room any more stays out and is told.
 */
export function xlsxWriter({ name }: Writing): WellWriter {
  const sheets = new Map<TableKind, string[]>();
  const rowsOf = new Map<TableKind, number>();
  const tables = tableWriter({
    format: 'A workbook',
    figures,
    lineOf(cells, kind) {
      const row = (rowsOf.get(kind) ?? 0) + 1;
      rowsOf.set(kind, row);
      return rowMarkup(cells, row);
    },
  });

  function put({ added, losses }: WrittenWell, one: OutgoingWell): WrittenWell {
    const fits = added.every(({ part }) => {
      const more = added.filter((other) => other.part === part).length;
      return (sheets.get(part as TableKind)?.length ?? 0) + more <= mostRows;
    });
    if (!fits) {
      const sentence = 'A sheet is full, so it does not go out. Write fewer wells, or CSV.';
      return { added: [], losses: [...losses, { well: nameOf(one.record), path: '', sentence }] };
    }
    for (const { part, content } of added) {
      const rows = sheets.get(part as TableKind) ?? [];
      rows.push(content as string);
      sheets.set(part as TableKind, rows);
    }
    return { added: [], losses };
  }

  return {
    well: (one) => put(tables.well(one), one),
    end() {
      const { written, combined } = tables.soFar;
      const file = `${name}.xlsx`;
      const mapping = mappingOf(written, (kind) => ({ file, sheet: kind }), combined);
      return {
        added: [
          { part: 'workbook', content: workbookOf(sheets) },
          { part: 'mapping', content: `${JSON.stringify(mapping, null, 2)}\n` },
        ],
        files: [
          { name: file, parts: ['workbook'] },
          { name: `${name}-mapping.json`, parts: ['mapping'] },
        ],
      };
    },
  };
}
