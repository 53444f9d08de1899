import { fileKind } from '../../core/base/picture/fileKind.ts';
import { jpegSize } from '../../core/base/picture/jpeg.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { largestLogo } from '../../core/contract/templatesShape.ts';
import type { Logo, Template } from '../../core/drawing/parts/headStrip.ts';
import type { TemplateFile, WrittenLogo } from '../../core/template/readTemplate.ts';

/** Bytes of a logo's file by its name; undefined where there is no such file. */
export type LogoFiles = (name: string) => Uint8Array | undefined;

/** Width and height stand in the first chunk of a PNG (ISO/IEC 15948, 11.2.2; from memory). */
function pngSize(bytes: Uint8Array): { width: number; height: number } | undefined {
  if (bytes.length < 24) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

function settleLogo({ says, data, file }: WrittenLogo, files: LogoFiles): Result<Logo> {
  const bytes =
    data === undefined ? files(file!) : Buffer.from(data.replace(/^data:[^,]*,/, ''), 'base64');
  const named = file ?? says;
  if (!bytes)
    return refused('templateUnread', `The logo ${named} does not lie beside the template.`);
  if (bytes.length > largestLogo)
    return refused('templateUnread', `The logo ${named} is larger than 1 MB: make it smaller.`);
  const kind = fileKind(bytes);
  const size = kind === 'image/png' ? pngSize(bytes) : jpegSize(bytes);
  if ((kind !== 'image/png' && kind !== 'image/jpeg') || !size?.width || !size.height)
    return refused('templateUnread', `The logo ${named} is neither a PNG nor a JPEG picture.`);
  return ok({
    ...size,
    data: `data:${kind};base64,${Buffer.from(bytes).toString('base64')}`,
    says,
  });
}

/** A template that was read, with the pictures of its logos and their sizes. */
export function settleLogos(read: TemplateFile, files: LogoFiles): Result<Template> {
  const logos: Logo[] = [];
  for (const one of read.logos) {
    const logo = settleLogo(one, files);
    if (!logo.ok) return logo;
    logos.push(logo.value);
  }
  return ok({ ...read, logos });
}
