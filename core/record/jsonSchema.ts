import { z } from 'zod';
import { currentVersion, wellRecord } from './schema.ts';

/** The record's shape as JSON Schema (draft 2020-12), for readers that are not this program. */
export function recordJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(wellRecord, { target: 'draft-2020-12', io: 'input' });
  return { title: `Borefolio well record, version ${currentVersion}`, ...schema };
}

/** The text of the published schema file. */
export function recordSchemaText(): string {
  return `${JSON.stringify(recordJsonSchema(), null, 2)}\n`;
}
