import {
  appendFileSync,
  closeSync,
  createReadStream,
  existsSync,
  fsyncSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Added, PartedFile } from '../../core/exchange/writer.ts';
import type { Archive } from '../archive/archive.ts';
import { exportWells, type Exported, type ExportWish } from './exportWells.ts';

/** Letters of a part that are held in memory before they go to the disk. */
const held = 1 << 20;

/** Parts as files of a folder, so that an archive of any size goes through. */
function partsIn(folder: string) {
  const names = new Map<string, string>();
  const texts = new Map<string, string>();
  const fileOf = (part: string) => {
    const name = names.get(part) ?? `part-${names.size}`;
    names.set(part, name);
    return path.join(folder, name);
  };
  function flush(part: string): void {
    const text = texts.get(part);
    if (text !== undefined) appendFileSync(fileOf(part), text);
    texts.delete(part);
  }
  function put({ part, content }: Added): void {
    if (typeof content !== 'string') {
      flush(part);
      appendFileSync(fileOf(part), content);
      return;
    }
    const text = (texts.get(part) ?? '') + content;
    texts.set(part, text);
    if (text.length > held) flush(part);
  }
  return { put, flush, fileOf };
}

async function joinParts(
  { name, parts }: PartedFile,
  folder: string,
  scratch: string,
  fileOf: (part: string) => string,
): Promise<void> {
  const made = path.join(scratch, 'joined');
  const handle = openSync(made, 'w');
  try {
    for (const part of parts) {
      if (!existsSync(fileOf(part))) continue;
      for await (const chunk of createReadStream(fileOf(part))) writeSync(handle, chunk as Buffer);
    }
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
  renameSync(made, path.join(folder, name));
}

function notWritten(folder: string, error: unknown): Result<never> {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  return refused(
    'exportNotWritten',
    `${folder} could not be written (${code}): make room on the disk, or see who may write there.`,
  );
}

/**
 * Writes the wells of an archive into a folder. Files are made beside their places and then renamed,
 * so that a reader meets the old file or the new one, whole.
 */
export async function exportToFolder(
  archive: Archive,
  wish: ExportWish,
  folder: string,
): Promise<Result<Exported>> {
  let scratch: string | undefined;
  try {
    mkdirSync(folder, { recursive: true });
    scratch = mkdtempSync(path.join(folder, '.export-'));
    const { put, flush, fileOf } = partsIn(scratch);
    const exported = await exportWells(archive, wish, put);
    if (!exported.ok) return exported;
    for (const file of exported.value.files) {
      file.parts.forEach(flush);
      await joinParts(file, folder, scratch, fileOf);
    }
    return ok(exported.value);
  } catch (error) {
    return notWritten(folder, error);
  } finally {
    if (scratch !== undefined) rmSync(scratch, { recursive: true, force: true });
  }
}
