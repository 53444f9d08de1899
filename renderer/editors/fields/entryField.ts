import type { Field } from '../../state/field.ts';

/** A field with how it is offered: a line to type, words to choose, words that complete. */
export interface EntryField extends Field {
  readonly label: string;
  readonly unit?: string;
  readonly control: 'line' | 'long' | 'choice' | 'suggest';
  /** Words offered, in their order. */
  readonly options?: readonly string[];
  /** A number: set to the right in tables. */
  readonly figures?: boolean;
  /** Needs room for a date with its time and offset. */
  readonly roomy?: boolean;
}

/** What may be said of a field besides its name and label. */
export interface Extras {
  readonly required?: boolean;
  readonly at?: string;
  readonly unit?: string;
}

/** The label with its unit, as a column's head says it. */
export function headOf({ label, unit }: EntryField): string {
  return unit === undefined ? label : `${label} (${unit})`;
}
