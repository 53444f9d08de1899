import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { recordJsonSchema, recordSchemaText } from '../../../core/record/jsonSchema.ts';
import { wellRecord } from '../../../core/record/schema.ts';

const file = path.resolve(import.meta.dirname, '../../../docs/record.schema.json');

interface Node {
  description?: string;
  properties?: Record<string, Node>;
  items?: Node;
  oneOf?: Node[];
  additionalProperties?: unknown;
}

/** Every field of the schema with its path; a field without a sentence is one nobody can fill. */
function fields(node: Node, at: string): [string, Node][] {
  const inside = Object.entries(node.properties ?? {}).flatMap(([key, child]) => [
    [`${at}.${key}`, child] as [string, Node],
    ...fields(child, `${at}.${key}`),
  ]);
  const items = node.items ? fields(node.items, `${at}[]`) : [];
  return [...inside, ...items, ...(node.oneOf ?? []).flatMap((one) => fields(one, at))];
}

describe('the published schema', () => {
  it('is the one of the source; run `npm run make:schema` when it is stale', () => {
    expect(readFileSync(file, 'utf8')).toBe(recordSchemaText());
  });

  it('names every chapter and lets unknown keys be', () => {
    const schema = recordJsonSchema() as Node;
    expect(Object.keys(schema.properties!)).toEqual(Object.keys(wellRecord.shape));
    expect(schema.additionalProperties).toEqual({});
  });

  it('has a sentence on every field', () => {
    const silent = fields(recordJsonSchema() as Node, 'record')
      .filter(([, field]) => !field.description)
      .map(([at]) => at);
    expect(silent).toEqual([]);
  });
});
