import type { Language } from '../../base/language.ts';
import type { Reason } from '../reasons/reason.ts';
import { sayReason } from '../reasons/sayReason.ts';

/** Something in a table that could not be taken as it stands. */
export interface TableTrouble {
  readonly file: string;
  /** Line of the file on which the row begins, counted from 1. */
  readonly line: number;
  /** Heading of the column, or of several joined by ` + `; empty where the row as a whole is meant. */
  readonly column: string;
  /** Says in English what is wrong and what came of it. */
  readonly sentence: string;
  /** The same as data, where other languages have words for it. */
  readonly reason?: Reason;
  /** The row came in all the same. */
  readonly kept: boolean;
}

/** What a trouble says, in the language's own words where it has them, else in English. */
export function sayTableTrouble({ reason, sentence }: TableTrouble, language: Language): string {
  return reason === undefined ? sentence : sayReason(reason, language);
}

/** A reason with its sentence in English, as a trouble holds both. */
export function told(reason: Reason): Pick<TableTrouble, 'sentence'> & { readonly reason: Reason } {
  return { sentence: sayReason(reason, 'en'), reason };
}
