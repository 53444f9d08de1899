import path from 'node:path';
import { createHash } from 'node:crypto';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { freshFolder, openFresh, valueOf } from './sample.ts';

const bytes = Uint8Array.from({ length: 5000 }, (_, at) => (at * 31) % 256);
const png = { mediaType: 'image/png', bytes } as const;
const copy = { mediaType: 'image/jpeg', width: 40, height: 30, bytes: bytes.slice(0, 90) } as const;

const countIn = (file: string, table: string) => {
  const db = new Database(file, { readonly: true });
  const count = db.prepare(`SELECT count(*) FROM ${table}`).pluck().get();
  db.close();
  return count;
};

function refusalOf(result: ReturnType<Archive['attachment']>) {
  if (result.ok) throw new Error('not refused');
  return result.error;
}

describe('an attachment', () => {
  it('is kept byte for byte under its SHA-256, with its kind and the moment it came', () => {
    const archive = openFresh();
    const hash = valueOf(archive.attach(png));
    expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
    const back = valueOf(archive.attachment(hash));
    expect([...back.bytes]).toEqual([...bytes]);
    expect(back.mediaType).toBe('image/png');
    expect(back.addedAt).toMatch(/^2025-03-01T08:/);
  });

  it('is kept once, however often it is given; a copy may come later and then stays', () => {
    const file = path.join(freshFolder(), 'Kalo.borefolio');
    const archive = openFresh(file);
    const hash = valueOf(archive.attach(png));
    expect(archive.printCopy(hash).ok).toBe(false);
    expect(valueOf(archive.attach({ ...png, copy }))).toBe(hash);
    const first = valueOf(archive.printCopy(hash));
    expect(first).toMatchObject({ mediaType: 'image/jpeg', width: 40, height: 30 });
    expect([...first.bytes]).toEqual([...copy.bytes]);
    valueOf(archive.attach({ ...png, copy: { ...copy, width: 8 } }));
    expect(valueOf(archive.printCopy(hash)).width).toBe(40);
    archive.close();
    expect(countIn(file, 'attachment')).toBe(1);
    expect(countIn(file, 'print_copy')).toBe(1);
  });

  it('is refused in a sentence when it is not there', () => {
    const archive = openFresh();
    for (const asked of [archive.attachment('ab'), archive.printCopy('ab')] as const) {
      const { code, sentence } = refusalOf(asked as ReturnType<Archive['attachment']>);
      expect(code).toBe('noSuchFile');
      expect(sentence).toContain('Add it again');
    }
  });

  it('tells that it was changed outside the program', () => {
    const file = path.join(freshFolder(), 'Kalo.borefolio');
    const archive = openFresh(file);
    const hash = valueOf(archive.attach(png));
    const db = new Database(file);
    db.exec(`DROP TRIGGER attachment_is_written_once; UPDATE attachment SET bytes = x'00'`);
    db.close();
    expect(refusalOf(archive.attachment(hash)).code).toBe('changedFile');
  });

  it('is in the archive’s copies', async () => {
    const folder = freshFolder();
    const archive = openFresh(path.join(folder, 'Kalo.borefolio'));
    const hash = valueOf(archive.attach({ ...png, copy }));
    await archive.copyTo(path.join(folder, 'copy.borefolio'));
    archive.close();
    const again = openFresh(path.join(folder, 'copy.borefolio'));
    expect(valueOf(again.attachment(hash)).bytes).toHaveLength(bytes.length);
    expect(valueOf(again.printCopy(hash)).bytes).toHaveLength(copy.bytes.length);
  });
});
