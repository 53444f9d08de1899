import type * as Fs from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, it, vi } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, record, valueOf } from './sample.ts';

// Stands in for a file without write permission, which the superuser could write to all the same.
const disk = vi.hoisted(() => ({ locked: false }));
vi.mock('node:fs', async (original) => {
  const fs = await original<typeof Fs>();
  const accessSync = () => {
    if (disk.locked) throw new Error('EACCES');
  };
  return { ...fs, accessSync };
});

function lockedArchive(version?: number): string {
  disk.locked = false;
  const archive = openFresh();
  valueOf(archive.create('a', record));
  archive.close();
  const db = new Database(archive.file);
  if (version !== undefined) db.pragma(`user_version = ${version}`);
  db.close();
  disk.locked = true;
  return archive.file;
}

describe('a write-protected archive', () => {
  it('opens to read and says so', () => {
    const opened = valueOf(openArchive(lockedArchive(), countingWorld()));
    expect(opened.readOnly).toContain('write-protected');
    expect(valueOf(opened.open('a')).document).toEqual(record);
    const refused = opened.create('b', record);
    expect(refused).toMatchObject({ ok: false, error: { code: 'readOnly' } });
    if (!refused.ok) expect(refused.error.sentence).toBe(opened.readOnly);
    opened.close();
  });

  it('is refused when it would have to be brought up to date first', () => {
    const opened = openArchive(lockedArchive(10), countingWorld());
    expect(opened).toMatchObject({ ok: false, error: { code: 'oldAndProtected' } });
  });
});
