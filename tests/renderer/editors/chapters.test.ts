import { describe, expect, it } from 'vitest';
import { chapterIds, type Block, type ViewBlock } from '../../../renderer/editors/chapter.ts';
import { chapterFor, chapters } from '../../../renderer/editors/chapters/index.ts';
import type { EntryField } from '../../../renderer/editors/fields/entryField.ts';
import { wellRecord } from '../../../core/record/schema.ts';

const blocks = chapterIds.flatMap((id) => chapters[id]().map((block) => ({ id, block })));

interface Shape {
  readonly unwrap?: () => Shape;
  readonly element?: Shape;
  readonly shape?: Readonly<Record<string, Shape>>;
  readonly safeParse: (value: unknown) => { readonly success: boolean };
}

function inner(schema: Shape): Shape {
  return schema.unwrap && !schema.element ? inner(schema.unwrap()) : schema;
}

/** What the record's schema has at a path of names, through lists. */
function schemaAt(path: string): Shape | undefined {
  let here: Shape = inner(wellRecord as unknown as Shape);
  for (const name of path.split('.').filter(Boolean)) {
    if (here.element) here = inner(here.element);
    const next = here.shape?.[name];
    if (!next) return undefined;
    here = inner(next);
  }
  return here;
}

/** Fields of a block by the places that they write to. */
function placesOf(block: Block | ViewBlock): { path: string; field: EntryField }[] {
  const at = (base: string, fields: readonly EntryField[]) =>
    fields.map((field) => {
      const path = [base, field.at ?? field.name].filter(Boolean).join('.');
      return { path, field };
    });
  if (block.kind === 'photos' || block.kind === 'view') return [];
  if (block.kind === 'fold') return block.blocks.flatMap(placesOf);
  if (block.kind === 'form') return at(block.base, block.fields);
  if (block.kind === 'table') return at(block.list, [...block.columns, ...block.more]);
  const { list, inner: name, fields, table } = block;
  return [...at(list, fields), ...at(`${list}.${name}`, [...table.columns, ...table.more])];
}
const pathsOf = (block: Block) => placesOf(block).map(({ path }) => path);
const places = blocks.flatMap(({ block }) => placesOf(block));

describe('the chapters of the well folder', () => {
  it('offer no field that the record does not have', () => {
    const wrong = blocks.flatMap(({ block }) => pathsOf(block)).filter((path) => !schemaAt(path));
    expect(wrong).toEqual([]);
  });

  it('are found again by the path of each field that they offer', () => {
    const lost = blocks.flatMap(({ id, block }) =>
      pathsOf(block).filter((path) => chapterFor(path) !== id),
    );
    expect(lost).toEqual([]);
  });

  it('know no chapter for a part of the record that cannot be typed', () => {
    expect(chapterFor('fromElsewhere[0]')).toBeUndefined();
  });

  it('offer no word that the record does not take', () => {
    const offered = places.flatMap(({ path, field }) =>
      (field.options ?? []).map((option) => ({ path, option, reading: field.read(option) })),
    );
    expect(offered.length).toBeGreaterThan(100);
    const refused = offered.filter(
      ({ path, reading }) => !reading.ok || !schemaAt(path)?.safeParse(reading.value).success,
    );
    expect(refused).toEqual([]);
  });

  it('show each word that they offer by itself when it comes back from the record', () => {
    const changed = places.flatMap(({ path, field }) =>
      (field.options ?? []).flatMap((option) => {
        const reading = field.read(option);
        return reading.ok && field.write(reading.value) === option ? [] : [`${path}: ${option}`];
      }),
    );
    expect(changed).toEqual([]);
  });

  it('take nothing for unknown wherever nothing was typed', () => {
    const wrong = places.filter(({ field }) => {
      const reading = field.read('  ');
      return !reading.ok || reading.value !== undefined;
    });
    expect(wrong).toEqual([]);
  });

  it('name every field, and no two of one block alike', () => {
    for (const { block } of blocks) {
      const labels = placesOf(block).map(({ path, field }) => {
        const list = path.split('.').slice(0, -1).join('.');
        return `${list}: ${field.label}`;
      });
      expect(labels).toEqual([...new Set(labels)]);
      expect(labels.filter((label) => label.endsWith(': '))).toEqual([]);
    }
  });

  it('have in a table’s columns all that a row must have, so that it can begin there', () => {
    const hidden = blocks.flatMap(({ block }) => {
      const table =
        block.kind === 'stack' ? block.table : block.kind === 'table' ? block : undefined;
      return (table?.more ?? []).filter(({ required }) => required);
    });
    expect(hidden).toEqual([]);
  });

  it('put rows in order only of a column that each row has', () => {
    const tables = blocks.flatMap(({ block }) => (block.kind === 'table' ? [block] : []));
    const sorted = tables.filter(({ sort }) => sort !== undefined);
    expect(sorted.map(({ list }) => list)).toEqual(
      expect.arrayContaining(['log', 'strikes', 'bore.sections', 'annulus']),
    );
    for (const { sort, columns } of sorted)
      expect(columns.find(({ name }) => name === sort?.by.at(-1))?.required).toBe(true);
  });
});
