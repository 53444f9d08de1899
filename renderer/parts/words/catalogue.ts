import type { choices } from './en/choices.ts';
import type { fields } from './en/fields.ts';
import type { english } from './en/index.ts';

/** What every language of the interface has to say; a language that lacks a text does not compile. */
export type InterfaceWords = typeof english;
export type FieldWords = typeof fields;
export type ChoiceWords = typeof choices;
