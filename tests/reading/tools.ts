import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { isOnPath, tools } from '../run/systemTools.mjs';

/** Runs a body with a file of the given bytes, and takes both away after it. */
function withFile<T>(bytes: Uint8Array, body: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-pdf-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, bytes);
    return body(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** All that qpdf and poppler have to say against a PDF; empty when it is sound. */
export function complaintsAbout(pdf: Uint8Array): string {
  return withFile(pdf, (file, folder) => {
    const check = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
    const paint = spawnSync('pdftoppm', ['-r', '40', file, path.join(folder, 'page')]);
    const soundness = check.status === 0 ? check.stderr : check.stdout + check.stderr;
    return soundness + paint.stderr.toString('utf8');
  });
}

/** One line of pdffonts for each font: its name, then whether it is embedded and has ToUnicode. */
export function fontsOf(pdf: Uint8Array): { name: string; embedded: boolean; unicode: boolean }[] {
  return withFile(pdf, (file) => {
    const rows = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
    return rows.map((row) => {
      const [, name = '', embedded, unicode] =
        /^(\S+).*?(yes|no) +(?:yes|no) +(yes|no) +\d+ +\d+$/.exec(row) ?? [];
      return { name, embedded: embedded === 'yes', unicode: unicode === 'yes' };
    });
  });
}

/** The first page as a PNG picture, painted by poppler. */
export function pictureOf(pdf: Uint8Array, dotsPerInch: number): Uint8Array {
  return withFile(pdf, (file, folder) => {
    const target = path.join(folder, 'page');
    const options = ['-r', String(dotsPerInch), '-png', '-singlefile', file, target];
    execFileSync('pdftoppm', options, { stdio: 'ignore' });
    return readFileSync(`${target}.png`);
  });
}

/** What zbar reads from codes on the first page, as poppler paints it. */
export function codesOn(pdf: Uint8Array, dotsPerInch: number): string[] {
  return withFile(pictureOf(pdf, dotsPerInch), (file) => {
    const { stdout } = spawnSync('zbarimg', ['-q', '--raw', file], { encoding: 'utf8' });
    return stdout.split('\n').filter(Boolean);
  });
}

function browserPath(): string {
  const folders = (process.env['PATH'] ?? '').split(path.delimiter);
  const names = tools.flatMap(({ debian, programs }) => (debian === 'chromium' ? programs : []));
  const places = names.flatMap((name) => folders.map((folder) => path.resolve(folder, name)));
  const found = places.find((place) => isOnPath(place, ''));
  if (!found) throw new Error('No browser of Chromium’s kind is on the path');
  return found;
}

/** A browser without a window. To be closed by whoever asked for it. */
export function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: browserPath(), args: ['--no-sandbox'] });
}
