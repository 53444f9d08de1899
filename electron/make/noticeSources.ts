import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Locked } from './lockedPackages.ts';
import type { NoticeSources } from './writeNotices.ts';

/** Names that packages give to the file of their licence, without the ending. */
const licenceNames = /^(licen[cs]e|copying)(-\w+)?(\.\w+)?$/i;

/** Reads what the notices are made from, in a project whose packages are installed. */
export function noticeSources(top: string): NoticeSources {
  const lock = JSON.parse(readFileSync(path.join(top, 'package-lock.json'), 'utf8')) as {
    packages: Locked;
  };
  const fonts = path.join(top, 'assets/fonts');
  const licences = readdirSync(fonts).filter((name) => name.endsWith('-LICENSE.txt'));
  return {
    locked: lock.packages,
    licenceText: (folder) => licenceText(path.join(top, folder)),
    fontLicences: Object.fromEntries(
      licences.sort().map((name) => [name, readFileSync(path.join(fonts, name), 'utf8')]),
    ),
  };
}

function licenceText(folder: string): string | undefined {
  if (!existsSync(folder)) return undefined;
  const name = readdirSync(folder)
    .filter((one) => licenceNames.test(one))
    .sort()[0];
  return name === undefined ? undefined : readFileSync(path.join(folder, name), 'utf8');
}
