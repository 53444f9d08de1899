import { readFileSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import { readTemplate } from '../../core/template/readTemplate.ts';
import { settleLogos } from './settleLogos.ts';

function parsed(file: string): Result<unknown> {
  try {
    return ok(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused(
      'templateUnread',
      code === undefined
        ? `${file} is not written as JSON.`
        : `${file} could not be read (${code}).`,
    );
  }
}

function bytesBeside(file: string, name: string): Uint8Array | undefined {
  try {
    return readFileSync(path.join(path.dirname(file), name));
  } catch {
    // The refusal names the logo that is not there.
    return undefined;
  }
}

/** The template of an organisation from its file, with logos from beside it. */
export function loadTemplate(file: string): Result<Template> {
  const written = parsed(file);
  if (!written.ok) return written;
  const read = readTemplate(written.value);
  return read.ok ? settleLogos(read.value, (name) => bytesBeside(file, name)) : read;
}
