import { closeSync, openSync, readFileSync, readSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { ReadRecord } from '../../core/record/read.ts';
import { readDocument } from '../service/stored.ts';
import { misused, type World } from './command.ts';

/** First bytes of every SQLite file, which an archive is. */
const archiveMark = 'SQLite format 3\0';

/** A file's bytes; a file that is not there is a slip of the caller. */
export function readBytes(file: string, world: World): Result<Buffer> {
  return reading(file, world, (place) => readFileSync(place));
}

/** As many bytes as tell what a file is: an archive with its photos may be larger than memory. */
export function readFirstBytes(file: string, world: World): Result<Buffer> {
  return reading(file, world, (place) => {
    const opened = openSync(place, 'r');
    try {
      const first = Buffer.alloc(archiveMark.length);
      return first.subarray(0, readSync(opened, first));
    } finally {
      closeSync(opened);
    }
  });
}

function reading(file: string, { folder }: World, read: (place: string) => Buffer): Result<Buffer> {
  try {
    return ok(read(path.resolve(folder, file)));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return misused(`There is no file ${file}: check its path.`);
    if (code === 'EISDIR') return misused(`${file} is a folder: name a file in it.`);
    return refused(
      'unreadable',
      `${file} could not be read (${code}): check that you may read it.`,
    );
  }
}

export function isArchive(bytes: Buffer): boolean {
  return bytes.subarray(0, archiveMark.length).toString('latin1') === archiveMark;
}

/** Text of a file in UTF-8, with or without the mark that some programs put first. */
export function textOf(bytes: Buffer): string {
  return bytes.toString('utf8').replace(/^\uFEFF/, '');
}

/** Parsed JSON, or a sentence that names the file and what the parser stumbled over. */
export function parseJson(text: string, file: string): Result<unknown> {
  try {
    return ok(JSON.parse(text));
  } catch (error) {
    return refused('notJson', `${file} is not JSON: ${(error as Error).message}.`);
  }
}

/** Reads a record from bytes of a file; what could not be read of it is in its troubles. */
export function recordFrom(bytes: Buffer, file: string): Result<ReadRecord> {
  const json = parseJson(textOf(bytes), file);
  if (!json.ok) return json;
  const read = readDocument(json.value);
  return read.ok ? read : refused(read.error.code, `${file}: ${read.error.sentence}`);
}

/** Reads a well's record from its file. */
export function readRecordFile(file: string, world: World): Result<ReadRecord> {
  const bytes = readBytes(file, world);
  if (!bytes.ok) return bytes;
  if (isArchive(bytes.value))
    return misused(`${file} is an archive of wells; this command takes the record of one well.`);
  return recordFrom(bytes.value, file);
}

/** The one word that a command takes. */
export function onlyWord(words: readonly string[], command: string): Result<string> {
  const [word, ...more] = words;
  if (word === undefined) return misused(`Name a file: borefolio ${command} FILE.`);
  if (more.length > 0) return misused(`Name one file only; ${more.join(' ')} is too much.`);
  return ok(word);
}
