import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileKind } from '../../core/base/picture/fileKind.ts';
import { jpegSize } from '../../core/base/picture/jpeg.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Logo, Template } from '../../core/drawing/parts/headStrip.ts';
import { readTemplate, type WrittenLogo } from '../../core/template/readTemplate.ts';

/** A logo larger than this makes every paper heavy. */
const mostBytes = 1_000_000;

/** Width and height stand in the first chunk of a PNG (ISO/IEC 15948, 11.2.2; from memory). */
function pngSize(bytes: Uint8Array): { width: number; height: number } | undefined {
  if (bytes.length < 24) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

function bytesOf({ data, file }: WrittenLogo, folder: string): Result<Uint8Array> {
  if (data !== undefined) return ok(Buffer.from(data.replace(/^data:[^,]*,/, ''), 'base64'));
  try {
    return ok(readFileSync(path.join(folder, file!)));
  } catch {
    return refused('templateUnread', `The logo ${file} does not lie beside the template.`);
  }
}

function loadLogo(logo: WrittenLogo, folder: string): Result<Logo> {
  const bytes = bytesOf(logo, folder);
  if (!bytes.ok) return bytes;
  const kind = fileKind(bytes.value);
  const size = kind === 'image/png' ? pngSize(bytes.value) : jpegSize(bytes.value);
  const named = logo.file ?? logo.says;
  if ((kind !== 'image/png' && kind !== 'image/jpeg') || !size?.width || !size.height)
    return refused('templateUnread', `The logo ${named} is neither a PNG nor a JPEG picture.`);
  if (bytes.value.length > mostBytes)
    return refused('templateUnread', `The logo ${named} is larger than 1 MB: make it smaller.`);
  const data = `data:${kind};base64,${Buffer.from(bytes.value).toString('base64')}`;
  return ok({ ...size, data, says: logo.says });
}

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

/** The template of an organisation from its file, with logos from beside it. */
export function loadTemplate(file: string): Result<Template> {
  const written = parsed(file);
  if (!written.ok) return written;
  const read = readTemplate(written.value);
  if (!read.ok) return read;
  const logos: Logo[] = [];
  for (const one of read.value.logos) {
    const logo = loadLogo(one, path.dirname(file));
    if (!logo.ok) return logo;
    logos.push(logo.value);
  }
  return ok({ ...read.value, logos });
}
