import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Sheet } from '../service/sheet.ts';
import { misused, type World } from './command.ts';

/** Where sheets go: one PDF, one SVG a page, or a folder for a PDF a well. */
export type Target =
  | { readonly kind: 'pdf' | 'svg'; readonly file: string }
  | { readonly kind: 'folder'; readonly folder: string };

function isFolder(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** Reads what was given after `-o`: a folder is one that exists or ends in a slash. */
export function readTarget(given: string | undefined, { folder }: World): Result<Target> {
  if (given === undefined)
    return misused('Say where to write: -o sheet.pdf, sheet.svg or a folder.');
  const file = path.resolve(folder, given);
  if (/[\\/]$/.test(given) || isFolder(file)) return ok({ kind: 'folder', folder: file });
  const ending = path.extname(file).toLowerCase();
  if (ending === '.pdf') return ok({ kind: 'pdf', file });
  if (ending === '.svg') return ok({ kind: 'svg', file });
  return misused(`${given} ends in neither .pdf nor .svg: say which it shall be.`);
}

/** A path as the caller would type it, unless it lies elsewhere. */
function shown(file: string, folder: string): string {
  const relative = path.relative(folder, file);
  return relative.startsWith('..') ? file : relative;
}

function write(file: string, content: Uint8Array | string, { print, folder }: World): Result<void> {
  try {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, content);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused('unwritable', `${file} could not be written (${code}): check the place.`);
  }
  print(`Written: ${shown(file, folder)}`);
  return ok(undefined);
}

/** `sheet.svg` for the only page; `sheet-1.svg`, `sheet-2.svg` for several. */
function pageFile(file: string, page: number, pages: number): string {
  if (pages === 1) return file;
  const { dir, name, ext } = path.parse(file);
  return path.join(dir, `${name}-${page}${ext}`);
}

function writePages(sheet: Sheet, file: string, world: World): Result<void> {
  const pages = sheet.drawing.pages.length;
  for (let page = 1; page <= pages; page += 1) {
    const written = write(pageFile(file, page, pages), sheet.svg(page), world);
    if (!written.ok) return written;
  }
  return ok(undefined);
}

/** Writes a sheet where it shall go; `name` is its file's name in a folder. */
export function writeSheet(sheet: Sheet, target: Target, name: string, world: World): Result<void> {
  if (target.kind === 'svg') return writePages(sheet, target.file, world);
  const file = target.kind === 'folder' ? path.join(target.folder, name) : target.file;
  return write(file, sheet.pdf(), world);
}
