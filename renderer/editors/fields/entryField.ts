import type { Field } from '../../state/field.ts';

/** A field with how it is offered: a line to type, lines of a text, words that complete. */
export interface EntryField extends Field {
  readonly label: string;
  readonly unit?: string;
  readonly control: 'line' | 'long' | 'words';
  /** Words offered, in their order. */
  readonly options?: readonly string[];
  /** Short codes by word, where words have some. */
  readonly codes?: Readonly<Record<string, string>>;
  /** Where in a text the word that is being typed begins; at its start where absent. */
  readonly wordAt?: (text: string) => number;
  /** A number: set to the right in tables. */
  readonly figures?: boolean;
  /** Needs room for a date with its time and offset. */
  readonly roomy?: boolean;
  /** Enter passes over it in a table; Tab does not. */
  readonly aside?: boolean;
}

/** What may be said of a field besides its name and label. */
export interface Extras {
  readonly required?: boolean;
  readonly at?: string;
  readonly unit?: string;
  readonly aside?: boolean;
}

/** The label with its unit, as a column's head says it. */
export function headOf({ label, unit }: EntryField): string {
  return unit === undefined ? label : `${label} (${unit})`;
}
