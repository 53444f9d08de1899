import { absent, readAs } from '../../state/field.ts';
import type { EntryField, Extras } from './entryField.ts';

const asText = (value: unknown) => String(value);
const kept = (text: string) => (text.trim() === '' ? absent : readAs(text));

export function textField(name: string, label: string, extras: Extras = {}): EntryField {
  return { name, label, control: 'line', ...extras, read: kept, write: asText };
}

/** A text of several lines. */
export function longField(name: string, label: string): EntryField {
  return { ...textField(name, label), control: 'long' };
}
