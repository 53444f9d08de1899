import { readFile, realpath } from 'node:fs/promises';
import path from 'node:path';

/** A file of the built page, ready to be sent. */
export interface PageFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Media type for the Content-Type header. */
  readonly type: string;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
};

/**
 * What the page may load, and from where: its own files, pictures and papers that it made itself,
 * nothing from any other place, no script or style written into the page.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  'frame-src blob:',
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The steps of a URL's path, or undefined where one would lead out of a folder. */
function stepsOf(urlPath: string): string[] | undefined {
  try {
    const steps = decodeURIComponent(urlPath).split('/').slice(1);
    const leadsOut = steps.some((step) => step === '..' || /[\\:\0]/.test(step));
    return leadsOut ? undefined : steps;
  } catch {
    return undefined;
  }
}

/**
 * The file of the built page behind a URL's path (`/` is index.html); undefined where there is
 * none, its kind is not one of a page's, or it lies outside the folder, by links too.
 */
export async function readPageFile(folder: string, urlPath: string): Promise<PageFile | undefined> {
  const steps = stepsOf(urlPath === '/' ? '/index.html' : urlPath);
  const type = steps && types[path.extname(steps.at(-1)!).toLowerCase()];
  if (!steps || type === undefined) return undefined;
  try {
    const top = await realpath(folder);
    const file = await realpath(path.join(top, ...steps));
    if (!file.startsWith(top + path.sep)) return undefined;
    return { bytes: new Uint8Array(await readFile(file)), type };
  } catch {
    return undefined;
  }
}
