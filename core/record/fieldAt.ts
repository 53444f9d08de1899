import { z } from 'zod';
import type { PathStep } from '../base/recordPath.ts';
import { hints } from './fields.ts';
import type { Phrase } from './phrases/phrase.ts';
import { wellRecord } from './schema.ts';

type Field = z.core.$ZodType;

function bare(field: Field): Field {
  return field instanceof z.ZodOptional ? bare(field.unwrap()) : field;
}

/** The field one step further in, or undefined where the schema knows none. */
export function childOf(field: Field, step: PathStep): Field | undefined {
  const one = bare(field);
  if (one instanceof z.ZodArray) return one.element;
  if (one instanceof z.ZodTuple) return one.def.items[Number(step)];
  if (one instanceof z.ZodObject)
    return Object.hasOwn(one.shape, step) ? one.shape[step] : undefined;
  if (!(one instanceof z.ZodDiscriminatedUnion)) return undefined;
  for (const option of one.options) {
    const found = childOf(option, step);
    if (found) return found;
  }
  return undefined;
}

/** The keys that a group of fields may have; empty for anything else. */
export function keysOf(field: Field): string[] {
  const one = bare(field);
  if (one instanceof z.ZodObject) return Object.keys(one.shape);
  if (one instanceof z.ZodDiscriminatedUnion) return [...new Set(one.options.flatMap(keysOf))];
  return [];
}

/** What to write into the field at a path, as far as its kind says. */
export function hintAt(steps: readonly PathStep[]): Phrase | undefined {
  let field: Field | undefined = wellRecord;
  for (const step of steps) field = field && childOf(field, step);
  return field && hints.get(bare(field))?.write;
}
