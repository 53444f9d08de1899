import { describe, expect, it } from 'vitest';
import { chapterIds, type Block } from '../../../renderer/editors/chapter.ts';
import { chapterFor, chapters } from '../../../renderer/editors/chapters/index.ts';
import { wellRecord } from '../../../core/record/schema.ts';

const blocks = chapterIds.flatMap((id) => chapters[id].map((block) => ({ id, block })));

interface Shape {
  readonly unwrap?: () => Shape;
  readonly element?: Shape;
  readonly shape?: Readonly<Record<string, Shape>>;
}

function inner(schema: Shape): Shape {
  return schema.unwrap && !schema.element ? inner(schema.unwrap()) : schema;
}

/** Whether the record's schema has a field at a path of names, through lists. */
function has(path: string): boolean {
  let here: Shape = inner(wellRecord as unknown as Shape);
  for (const name of path.split('.').filter(Boolean)) {
    if (here.element) here = inner(here.element);
    const next = here.shape?.[name];
    if (!next) return false;
    here = inner(next);
  }
  return true;
}

function pathsOf(block: Block): string[] {
  const at = (base: string, fields: readonly { name: string; at?: string }[]) =>
    fields.map((field) => [base, field.at ?? field.name].filter(Boolean).join('.'));
  if (block.kind === 'form') return at(block.base, block.fields);
  if (block.kind === 'table') return at(block.list, [...block.columns, ...block.more]);
  const { list, inner: name, fields, table } = block;
  return [...at(list, fields), ...at(`${list}.${name}`, [...table.columns, ...table.more])];
}

describe('the chapters of the well folder', () => {
  it('offer no field that the record does not have', () => {
    const wrong = blocks.flatMap(({ block }) => pathsOf(block)).filter((path) => !has(path));
    expect(wrong).toEqual([]);
  });

  it('are found again by the path of each field that they offer', () => {
    const lost = blocks.flatMap(({ id, block }) =>
      pathsOf(block).filter((path) => chapterFor(path) !== id),
    );
    expect(lost).toEqual([]);
  });

  it('know no chapter for a part of the record that cannot be typed', () => {
    expect(chapterFor('photos[0]')).toBeUndefined();
  });
});
