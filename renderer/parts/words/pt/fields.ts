import type { FieldWords } from '../catalogue.ts';
import { fields as english } from '../en/fields.ts';

export const fields: FieldWords = { ...english };
