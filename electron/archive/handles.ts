import type { Database } from 'better-sqlite3';

declare const writes: unique symbol;

/** What queries that only read are handed. */
export type ReadHandle = Pick<Database, 'prepare'>;

/** What queries that change something are handed; there is none for a read-only archive. */
export type WriteHandle = Database & { readonly [writes]: true };
