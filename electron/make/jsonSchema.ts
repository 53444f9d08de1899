/**
 * Writes docs/record.schema.json from the record's schema. Run with `npm run make:schema` after
 * changing a chapter of the record.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { recordSchemaText } from '../../core/record/jsonSchema.ts';

const docs = path.resolve(import.meta.dirname, '../../docs');
mkdirSync(docs, { recursive: true });
writeFileSync(path.join(docs, 'record.schema.json'), recordSchemaText());
