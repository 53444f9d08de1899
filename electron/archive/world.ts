/** What the archive is handed from outside. */
export interface ArchiveWorld {
  /** Now, ISO 8601. */
  readonly now: () => string;
}
