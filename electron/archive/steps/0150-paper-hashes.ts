import type { Step } from './step.ts';

/**
 * The hash of each issued paper's bytes, unknown for papers that were issued before; and the id by
 * which its record names the well, where that came from another archive under another id.
 */
export const paperHashes: Step = {
  number: 150,
  name: 'paper hashes',
  sql: `
    ALTER TABLE issue ADD COLUMN pdf_hash TEXT;
    ALTER TABLE issue ADD COLUMN shown_id TEXT;
  `,
};
