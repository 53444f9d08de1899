import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { app, dialog } from 'electron';
import { replaceFile } from '../files/replaceFile.ts';
import type { DesktopWords } from './words.ts';

const ending = 'borefolio';
const filters = ({ archiveKind }: DesktopWords) => [{ name: archiveKind, extensions: [ending] }];

const noteFile = () => path.join(app.getPath('userData'), 'lastArchive.txt');

/** The archive that a command line names; undefined where it names none. */
export function archiveInArguments(words: readonly string[], folder: string): string | undefined {
  const named = words.find((word) => word.endsWith(`.${ending}`) && !word.startsWith('-'));
  return named === undefined ? undefined : path.resolve(folder, named);
}

/** The archive of the last time, where it still is; else the one that a first start makes. */
export function usualArchive(): string {
  const last = existsSync(noteFile()) ? readFileSync(noteFile(), 'utf8') : '';
  if (last !== '' && existsSync(last)) return last;
  return path.join(app.getPath('documents'), `Wells.${ending}`);
}

/** Notes which archive to open the next time; a note that cannot be made keeps nobody from work. */
export function noteArchive(file: string): Promise<void> {
  return replaceFile(noteFile(), file).catch(() => undefined);
}

/** Asks for an archive that is there. */
export async function askForArchive(words: DesktopWords): Promise<string | undefined> {
  const options = { filters: filters(words), properties: ['openFile' as const] };
  const { filePaths } = await dialog.showOpenDialog(options);
  return filePaths[0];
}

/** Asks where a new archive shall be. */
export async function askForNewArchive(words: DesktopWords): Promise<string | undefined> {
  const options = { filters: filters(words), defaultPath: `Wells.${ending}` };
  const { filePath } = await dialog.showSaveDialog(options);
  return filePath === '' ? undefined : filePath;
}
