import { createHash } from 'node:crypto';
import type { Answer, CallName } from '../../core/contract/calls.ts';

/** A PDF that the service made for the page. */
export interface MadeFile {
  readonly fileName: string;
  readonly pdf: Uint8Array;
}

/** PDFs made last, which the browser may show for a while. */
export interface MadeFiles {
  /** Keeps the PDF that is in an answer, if there is one. */
  keep(name: string, answer: Answer<CallName>): void;
  /** By its SHA-256, hexadecimal; undefined where it was never made, or is no longer kept. */
  get(hash: string): MadeFile | undefined;
}

/** The calls whose PDFs a person prints from the sheet in sight. */
const papers = ['papers.asBuilt', 'papers.layingOut', 'papers.committee'];

/** Files kept at once, the newest. */
export const mostKept = 4;

/** Milliseconds that a file is kept: time to open it, and to load its tab anew. */
export const keptFor = 5 * 60_000;

/** A list in memory, which forgets. */
export function madeFiles(): MadeFiles {
  const kept = new Map<string, MadeFile>();
  return {
    keep(name, answer) {
      if (!papers.includes(name) || !answer.ok) return;
      const { fileName, pdf } = answer.value as { fileName: string; pdf: string };
      const made = { fileName, pdf: Buffer.from(pdf, 'base64') };
      const hash = createHash('sha256').update(made.pdf).digest('hex');
      kept.delete(hash);
      kept.set(hash, made);
      for (const old of [...kept.keys()].slice(0, -mostKept)) kept.delete(old);
      setTimeout(() => {
        if (kept.get(hash) === made) kept.delete(hash);
      }, keptFor).unref();
    },
    get: (hash) => kept.get(hash),
  };
}

/** A file name as a header says it in UTF-8 (RFC 8187, 3.2.1; RFC 6266, 4.3). */
function extended(fileName: string): string {
  const whole = Buffer.from(fileName).toString();
  const octet = (letter: string) => `%${letter.charCodeAt(0).toString(16).toUpperCase()}`;
  return `UTF-8''${encodeURIComponent(whole).replace(/['()*]/g, octet)}`;
}

/** Headers under which a browser shows the PDF itself, and names it when it is saved. */
export function inlineHeaders({ fileName }: MadeFile): Record<string, string> {
  return {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename*=${extended(fileName)}`,
    // A browser's viewer is a page of its own, with scripts and styles of its own.
    'Content-Security-Policy': "frame-ancestors 'none'",
  };
}
