import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { largestFile } from '../../../core/contract/attachmentsShape.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openFresh, valueOf } from '../archive/sample.ts';
import { jpegOf } from '../../pictures/jpeg.ts';
import { pngOf } from '../../pictures/png.ts';
import { freshService } from './sample.ts';

const shade = (x: number, y: number) => [(x + y) % 256, x % 256, 40] as const;
const jpeg = jpegOf(96, 64, shade);
const png = pngOf(31, 17, shade);
const pdf = Buffer.from('%PDF-1.7\n%…\n');
const text = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

let service: Service;
const put = (data: string, copy?: string) =>
  service.call('attachments.put', copy === undefined ? { data } : { data, copy });

async function codeOf(data: string, copy?: string) {
  const answer = await put(data, copy);
  if (answer.ok) throw new Error('was taken');
  expect(answer.error.sentence).toMatch(/\.$/);
  return answer.error.code;
}

beforeEach(() => {
  service = freshService();
});

describe('a file that is handed to the service', () => {
  it('comes back as it was given, under its SHA-256', async () => {
    const kept = valueOf(await put(text(png), text(jpeg)));
    expect(kept).toEqual({
      hash: createHash('sha256').update(png).digest('hex'),
      mediaType: 'image/png',
      bytes: png.length,
    });
    const back = valueOf(await service.call('attachments.get', { hash: kept.hash }));
    expect(back).toEqual({ data: text(png), mediaType: 'image/png' });
  });

  it('has its copy for print beside it, of the size that the copy itself tells', async () => {
    const { hash } = valueOf(await put(text(png), text(jpeg)));
    expect(valueOf(await service.call('attachments.printCopy', { hash }))).toEqual({
      data: text(jpeg),
      mediaType: 'image/jpeg',
      width: 96,
      height: 64,
    });
  });

  it('may be a PDF, which has no copy for print', async () => {
    const { hash, mediaType } = valueOf(await put(text(pdf)));
    expect(mediaType).toBe('application/pdf');
    const copy = await service.call('attachments.printCopy', { hash });
    expect(copy).toMatchObject({ ok: false, error: { code: 'noSuchFile' } });
  });

  it('is refused when it is of no kind that is kept', async () => {
    expect(await codeOf(text(Buffer.from('GIF89a')))).toBe('unknownKind');
    expect(await codeOf(text(Buffer.from('\0\0\0\x18ftypheic', 'latin1')))).toBe('unknownKind');
    expect(await codeOf('')).toBe('unknownKind');
  });

  it('is refused when it is too large, and taken when it is just not', async () => {
    const large = (bytes: number) => text(Buffer.concat([pdf, Buffer.alloc(bytes - pdf.length)]));
    expect(await codeOf(large(largestFile + 1))).toBe('tooLarge');
    expect(await codeOf(large(largestFile + 4000))).toBe('tooLarge');
    expect(valueOf(await put(large(largestFile))).bytes).toBe(largestFile);
  });

  it('is not kept with a copy that cannot be printed as it is', async () => {
    expect(await codeOf(text(png), text(png))).toBe('badCopy');
    expect(await codeOf(text(png), text(jpeg.subarray(0, 30)))).toBe('badCopy');
    const hash = createHash('sha256').update(png).digest('hex');
    expect((await service.call('attachments.get', { hash })).ok).toBe(false);
  });

  it('is refused by an archive that can only be read', async () => {
    const archive = openFresh();
    const attach = () => ({ ok: false, error: { code: 'readOnly', sentence: 'So.' } }) as const;
    service = freshService({ ...archive, attach });
    expect(await codeOf(text(png))).toBe('readOnly');
  });
});
