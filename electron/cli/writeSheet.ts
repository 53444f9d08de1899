import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { dpiBounds } from '../../core/contract/papersShape.ts';
import type { Sheet } from '../service/sheet.ts';
import { misused, type World } from './command.ts';

/** Kinds of file that hold one page each. */
const pageKinds = ['svg', 'dxf', 'png'] as const;
type PageKind = (typeof pageKinds)[number];

/** Where sheets go: one PDF, a drawing file a page, or a folder for a PDF a well. */
export type Target =
  | { readonly kind: 'pdf'; readonly file: string }
  | { readonly kind: PageKind; readonly file: string; readonly dpi: number }
  | { readonly kind: 'folder'; readonly folder: string };

function isFolder(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** Dots an inch of pixels where nothing was said: what an office printer shows. */
const usualDpi = 300;

function readDpi(given: string | undefined): Result<number> {
  const dpi = given === undefined ? usualDpi : Number(given);
  const { least, most } = dpiBounds;
  if (Number.isInteger(dpi) && dpi >= least && dpi <= most) return ok(dpi);
  return misused(`--dpi ${given} is no whole number from ${least} to ${most}.`);
}

/**
 * Reads what was given after `-o`, and the dots an inch for pixels: a folder is one that exists or
 * ends in a slash.
 */
export function readTarget(
  given: string | undefined,
  { folder }: World,
  dpiGiven?: string,
): Result<Target> {
  if (given === undefined)
    return misused(
      'Say where to write: -o sheet.pdf, sheet.svg, sheet.dxf, sheet.png or a folder.',
    );
  const dpi = readDpi(dpiGiven);
  if (!dpi.ok) return dpi;
  const file = path.resolve(folder, given);
  if (/[\\/]$/.test(given) || isFolder(file)) return ok({ kind: 'folder', folder: file });
  const ending = path.extname(file).toLowerCase();
  if (ending === '.pdf') return ok({ kind: 'pdf', file });
  const kind = pageKinds.find((one) => ending === `.${one}`);
  if (kind) return ok({ kind, file, dpi: dpi.value });
  return misused(`${given} ends in none of .pdf, .svg, .dxf and .png: say which it shall be.`);
}

/** A path as the caller would type it, unless it lies elsewhere. */
function shown(file: string, folder: string): string {
  const relative = path.relative(folder, file);
  return relative.startsWith('..') ? file : relative;
}

function write(
  file: string,
  content: Uint8Array | string,
  { report, folder }: World,
): Result<void> {
  try {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, content);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused('unwritable', `${file} could not be written (${code}): check the place.`);
  }
  const written = shown(file, folder);
  report({ written }, `Written: ${written}`);
  return ok(undefined);
}

/** `sheet.svg` for the only page; `sheet-1.svg`, `sheet-2.svg` for several. */
function pageFile(file: string, page: number, pages: number): string {
  if (pages === 1) return file;
  const { dir, name, ext } = path.parse(file);
  return path.join(dir, `${name}-${page}${ext}`);
}

type PagesTarget = Extract<Target, { dpi: number }>;

function contentOf(sheet: Sheet, page: number, { kind, dpi }: PagesTarget) {
  switch (kind) {
    case 'svg':
      return sheet.svg(page);
    case 'dxf':
      return sheet.dxf(page);
    case 'png':
      return sheet.png(page, dpi);
  }
}

async function writePages(sheet: Sheet, target: PagesTarget, world: World): Promise<Result<void>> {
  const pages = sheet.drawing.pages.length;
  for (let page = 1; page <= pages; page += 1) {
    const content = await contentOf(sheet, page, target);
    const written = write(pageFile(target.file, page, pages), content, world);
    if (!written.ok) return written;
  }
  return ok(undefined);
}

/** Writes a sheet where it shall go; `name` is its file's name in a folder. */
export async function writeSheet(
  sheet: Sheet,
  target: Target,
  name: string,
  world: World,
): Promise<Result<void>> {
  if ('dpi' in target) return writePages(sheet, target, world);
  const file = target.kind === 'folder' ? path.join(target.folder, name) : target.file;
  return write(file, sheet.pdf(), world);
}
