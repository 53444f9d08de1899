/** What the archive is handed from outside. */
export interface ArchiveWorld {
  /** Now, ISO 8601. */
  readonly now: () => string;
  /** Told while the words of an older archive are written anew: how many wells are done, of all. */
  readonly onBringing?: (done: number, of: number) => void;
}
