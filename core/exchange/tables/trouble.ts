import type { Language } from '../../base/language.ts';
import type { Reason } from '../reasons/reason.ts';
import { sayReason, type SayRefusal } from '../reasons/sayReason.ts';

/** Something in a table that could not be taken as it stands. */
export interface TableTrouble {
  readonly file: string;
  /** Line of the file on which the row begins, counted from 1. */
  readonly line: number;
  /** Heading of the column, or of several joined by ` + `; empty where the row as a whole is meant. */
  readonly column: string;
  /** Says in English what is wrong and what came of it. */
  readonly sentence: string;
  /** The same as data, so that any language can say it. */
  readonly reason: Reason;
  /** The row came in all the same. */
  readonly kept: boolean;
}

/** What a trouble says in a language; see `sayReason` for files that were refused. */
export function sayTableTrouble(
  { reason }: TableTrouble,
  language: Language,
  sayRefusal?: SayRefusal,
): string {
  return sayReason(reason, language, sayRefusal);
}

/** A reason with its sentence in English, as a trouble holds both. */
export function told(reason: Reason): Pick<TableTrouble, 'sentence'> & { readonly reason: Reason } {
  return { sentence: sayReason(reason, 'en'), reason };
}
