import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { NewIssue } from '../../../electron/archive/issues.ts';
import { openFresh, record, revise, valueOf } from './sample.ts';

let archive: Archive;

const bytes = (text: string) => new Uint8Array(Buffer.from(text));

const line = {
  wellId: 'a',
  revision: 1,
  paper: 'as-built A4',
  languages: 'en',
  fileName: 'KA-012 as-built A4 rev 1.pdf',
  recordHash: '1'.repeat(64),
  freeMarks: [{ role: 'client', page: 1, box: { x: 1, y: 2, width: 3, height: 4 } }],
};
const paper: NewIssue = { ...line, pdf: bytes('%PDF paper') };

beforeEach(() => {
  archive = openFresh();
  valueOf(archive.create('a', record));
});

const textOf = (number: number) => Buffer.from(valueOf(archive.issues.pdf('a', number))).toString();

describe('issued papers', () => {
  it('are numbered over all papers of a well, and kept byte for byte', () => {
    const issuedAt = expect.stringMatching(/^2025-03-01T08:/);
    expect(valueOf(archive.issues.list('a'))).toEqual([]);
    expect(valueOf(archive.issues.add(paper))).toEqual({
      ...line,
      number: 1,
      issuedAt,
      // echo -n '%PDF paper' | sha256sum
      pdfHash: 'bd9f548d11486b106124b6e0f086ce279a89fda88767c653f8e39a037a44a824',
    });
    valueOf(archive.issues.add({ ...paper, paper: 'committee', pdf: bytes('%PDF other') }));
    expect(valueOf(archive.issues.list('a')).map(({ number }) => number)).toEqual([1, 2]);
    expect([textOf(1), textOf(2)]).toEqual(['%PDF paper', '%PDF other']);
  });

  it('stay as they are when the record goes on', () => {
    valueOf(archive.issues.add(paper));
    valueOf(revise(archive, 'a', { ...record, notes: 'second' }));
    expect(textOf(1)).toBe('%PDF paper');
    expect(valueOf(archive.issues.list('a'))[0]!.revision).toBe(1);
  });

  it('are of the newest revision, or refused', () => {
    valueOf(revise(archive, 'a', { ...record, notes: 'second' }));
    const late = archive.issues.add(paper);
    expect(late).toMatchObject({ ok: false, error: { code: 'staleRevision' } });
    expect(archive.issues.add({ ...paper, wellId: 'x' })).toMatchObject({
      error: { code: 'noSuchWell' },
    });
    expect(archive.issues.list('x')).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(valueOf(archive.issues.list('a'))).toEqual([]);
  });

  it('grow by what each signature adds, and by nothing else', () => {
    valueOf(archive.issues.add(paper));
    valueOf(archive.issues.seal('a', 1, bytes('%PDF paper one')));
    valueOf(archive.issues.seal('a', 1, bytes('%PDF paper one two')));
    expect(textOf(1)).toBe('%PDF paper one two');
    for (const other of ['%PDF paper one two', '%PDF pamper one two three', '%PDF']) {
      const refusal = archive.issues.seal('a', 1, bytes(other));
      expect(refusal).toMatchObject({ ok: false, error: { code: 'notTheSamePaper' } });
    }
    expect(archive.issues.seal('a', 2, bytes('%PDF'))).toMatchObject({
      error: { code: 'noSuchIssue' },
    });
    expect(archive.issues.pdf('a', 2)).toMatchObject({ error: { code: 'noSuchIssue' } });
  });

  it('leave the archive with their well', () => {
    valueOf(archive.issues.add(paper));
    valueOf(archive.issues.seal('a', 1, bytes('%PDF paper one')));
    valueOf(archive.bin.put('a'));
    expect(valueOf(archive.bin.empty(['a']))).toBe(1);
    expect(archive.issues.pdf('a', 1)).toMatchObject({ error: { code: 'noSuchIssue' } });
  });
});
