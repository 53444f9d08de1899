/** A record as it came, of any version. */
export type RecordDocument = Readonly<Record<string, unknown>>;

/**
 * One step from a version to the next. A step that has been published is never edited: files of
 * its version are out there. It uses nothing of the present schema, which will have moved on.
 */
export interface Migration {
  /** The version that it makes. */
  readonly version: number;
  readonly name: string;
  /** Throws a sentence in an Error when the document cannot be brought over. */
  readonly change: (written: RecordDocument) => RecordDocument;
}
