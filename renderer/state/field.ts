/** What came of reading a text: a value, nothing (absent), or the sentence that says why not. */
export type Reading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly sentence: string };

/** How a field is typed and shown. */
export interface Field {
  /** Where it stands in its row or chapter, as in `from` or `committee.chair`. */
  readonly name: string;
  /** Where its value stands when that differs: two fields may write one value. */
  readonly at?: string;
  /** A row without it is not a row yet. */
  readonly required?: boolean;
  /** Texts by field name where one text is meant for several fields of the row. */
  readonly parts?: (text: string) => Starts | undefined;
  readonly read: (text: string) => Reading;
  readonly write: (value: unknown) => string;
}

/** Texts by field name that a new row starts with. */
export type Starts = Readonly<Record<string, string>>;

export const absent: Reading = { ok: true, value: undefined };

export function readAs(value: unknown): Reading {
  return { ok: true, value };
}

export function unread(sentence: string): Reading {
  return { ok: false, sentence };
}
