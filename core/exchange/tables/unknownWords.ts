import { isKnownWord, writingOf } from './cells.ts';
import { fieldsOf, type TableKind } from './fields.ts';
import { sourcesOf, type MappedTable, type TableMapping } from './mapping.ts';
import { headed } from './rows.ts';
import type { TableSource } from './source.ts';

/** Words of a column that takes words of a closed list, and that neither it nor the mapping knows. */
export interface UnknownWords {
  readonly file: string;
  readonly sheet?: string;
  readonly kind: TableKind;
  readonly field: string;
  readonly column: string;
  /** The record's words to choose from. */
  readonly choices: readonly string[];
  /** What an unknown word becomes; without it its rows are left out. */
  readonly fallback?: string;
  /** A row needs the field, so that a word that says nothing leaves its row out. */
  readonly needed: boolean;
  /** As they are written, the commonest first, at most `mostWords`. */
  readonly words: readonly { readonly text: string; readonly rows: number }[];
}

/** A column with more words than this is of free text. */
export const mostWords = 50;
/** Letters of a word; longer cells are sentences. */
const longestWord = 80;

type Cells = readonly (readonly string[])[];

function countOf(cells: Cells, at: number, isUnknown: (text: string) => boolean) {
  const counts = new Map<string, number>();
  for (const row of cells) {
    const text = row[at]?.trim() ?? '';
    if (text.length <= longestWord && isUnknown(text))
      counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts]
    .map(([text, rows]) => ({ text, rows }))
    .sort((a, b) => b.rows - a.rows || (a.text < b.text ? -1 : 1))
    .slice(0, mostWords);
}

function unknownIn(mapping: TableMapping, mapped: MappedTable, source: TableSource) {
  const writing = writingOf(mapping, mapped);
  const { heading, rows } = headed(
    source.rows({
      encoding: mapped.encoding ?? mapping.encoding,
      delimiter: mapped.delimiter ?? mapping.delimiter,
      decimal: writing.decimal,
    }),
    mapped.headingLine,
  );
  const cells = rows.map((row) => row.cells);
  const { file, sheet, kind } = mapped;
  return Object.entries(fieldsOf[kind]).flatMap(([name, field]): UnknownWords[] => {
    const [one, ...others] = sourcesOf(mapped, name);
    const column = one?.column;
    if (field.type !== 'word' || column === undefined || one?.understand === true) return [];
    // Where one source follows another, a word that is not known is left to the next.
    if (others.length > 0) return [];
    const isUnknown = (text: string) =>
      !writing.absent.includes(text) && !isKnownWord(text, one!, field);
    const words = countOf(cells, heading.indexOf(column), isUnknown);
    if (words.length === 0) return [];
    return [
      {
        ...{ file, ...(sheet === undefined ? {} : { sheet }), kind, field: name, column },
        ...{ choices: field.words!, needed: field.required === true, words },
        ...(field.fallback === undefined ? {} : { fallback: field.fallback }),
      },
    ];
  });
}

/** Words that a mapping of these tables does not know, by table and column. */
export function unknownWords(
  sources: readonly TableSource[],
  mapping: TableMapping,
): readonly UnknownWords[] {
  return mapping.tables.flatMap((mapped) => {
    const source = sources.find(
      ({ name, sheet }) =>
        name === mapped.file && (mapped.sheet === undefined || sheet === mapped.sheet),
    );
    return source ? unknownIn(mapping, mapped, source) : [];
  });
}
