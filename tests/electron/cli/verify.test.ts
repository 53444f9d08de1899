import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { valueOf } from '../archive/sample.ts';
import { prepareSealing, seal } from './sealing.ts';
import { ownFolder, type } from './typed.ts';

let folder: string;
beforeEach(() => {
  folder = ownFolder();
});

const inArchive = <T>(body: (archive: ReturnType<typeof opened>) => T): T => {
  const archive = opened();
  try {
    return body(archive);
  } finally {
    archive.close();
  }
};
const opened = () =>
  valueOf(openArchive(path.join(folder, 'a.borefolio'), { now: () => '2026-03-03T10:00:00.000Z' }));

/** The sealed paper's well gets a further revision. */
function reviseWell(): void {
  inArchive((archive) => {
    const { id } = valueOf(archive.list()).find(({ number }) => number === 'KV-25-011')!;
    const patch = [{ at: ['record', 'notes'], to: 'Later.' }];
    const edit = valueOf(archive.edit(id, { upon: 0, moves: [{ kind: 'edit', patch }] }));
    valueOf(archive.save(id, edit.edit));
  });
}

describe('borefolio verify, for a paper', () => {
  it('tells well and revision, who sealed, that it is whole, and gives 0', async () => {
    await prepareSealing(folder);
    await seal(folder);
    const { code, out } = await type(folder, ['verify', 'sealed.pdf', '--archive', 'a.borefolio']);
    expect(code).toBe(0);
    expect(out).toHaveLength(4);
    expect(out[0]).toMatch(/^Well KV-25-011, revision 1\. Hash of its record: [0-9a-f]{64}$/);
    expect(out[1]).toMatch(/^Seal 1: Ama Dravunké, supervisor, 2026-03-02 10:00 UTC\. It holds/);
    expect(out[2]).toBe(
      'The file bears one seal and is whole: nothing was changed or added since.',
    );
    expect(out[3]).toBe('The archive holds this very record as revision 1, the newest.');
  });

  it('gives 1 for a paper that was changed, added to or never sealed', async () => {
    await prepareSealing(folder);
    await seal(folder);
    const sealed = readFileSync(path.join(folder, 'sealed.pdf'));
    writeFileSync(path.join(folder, 'added.pdf'), Buffer.concat([sealed, Buffer.from(' ')]));
    sealed[4000]! ^= 1;
    writeFileSync(path.join(folder, 'changed.pdf'), sealed);
    const changed = await type(folder, ['verify', 'changed.pdf']);
    expect(changed.code).toBe(1);
    expect(changed.out.at(-1)).toContain('was changed since it was sealed');
    const added = await type(folder, ['verify', 'added.pdf']);
    expect(added.code).toBe(1);
    expect(added.out.at(-1)).toContain('something was added to it after the last signature');
    const bare = await type(folder, ['verify', 'paper.pdf']);
    expect(bare.code).toBe(1);
    expect(bare.out.at(-1)).toBe('The file bears no seal: whether it was changed cannot be told.');
  });

  it('knows the record again among older revisions', async () => {
    await prepareSealing(folder);
    await seal(folder);
    reviseWell();
    const { code, out } = await type(folder, ['verify', 'sealed.pdf', '--archive', 'a.borefolio']);
    expect(code).toBe(0);
    expect(out.at(-1)).toBe(
      'The archive holds this very record as revision 1; by now there is revision 2.',
    );
  });

  it('gives everything as JSON when asked', async () => {
    await prepareSealing(folder);
    await seal(folder);
    const words = ['verify', 'sealed.pdf', '--archive', 'a.borefolio', '--json'];
    const { out } = await type(folder, words);
    expect(JSON.parse(out.join('\n'))).toMatchObject({
      paper: { wellNumber: 'KV-25-011', revision: 1 },
      seals: { state: 'whole', whole: true, seals: [{ state: 'holds', role: 'supervisor' }] },
      archive: { held: 'same', revision: 1, newest: 1 },
    });
  });
});

describe('borefolio verify, for an archive', () => {
  const change = (sql: string) => {
    const db = new Database(path.join(folder, 'a.borefolio'));
    db.exec(sql);
    db.close();
  };

  it('walks the chains and gives 0 when they are whole', async () => {
    await type(folder, ['demo-archive', 'a.borefolio']);
    const { code, out } = await type(folder, ['verify', 'a.borefolio']);
    expect(code).toBe(0);
    expect(out).toEqual(['The chains of hashes are whole: 8 revisions, each as it was saved.']);
  });

  it('goes through the issued papers, and names the first that is not whole', async () => {
    await type(folder, ['demo-archive', 'a.borefolio']);
    const id = inArchive((archive) => {
      const well = valueOf(archive.list()).find(({ number }) => number === 'KV-25-011')!;
      const pdf = Buffer.from('%PDF-1.7 not a paper of this program');
      const line = { paper: 'as-built A4', languages: 'en', fileName: 'x.pdf', freeMarks: [] };
      const issue = { ...line, wellId: well.id, revision: 1, recordHash: '0'.repeat(64), pdf };
      valueOf(archive.issues.add(issue));
      valueOf(archive.issues.add(issue));
      return well.id;
    });
    const { code, out } = await type(folder, ['verify', 'a.borefolio']);
    expect(code).toBe(1);
    expect(out.slice(1)).toEqual([
      'First paper that is not whole: well KV-25-011, paper 1, x.pdf.',
      expect.stringContaining('does not name the record'),
      'Not whole either: well KV-25-011, paper 2.',
      '2 not whole of 2 issued papers.',
    ]);
    const { out: json } = await type(folder, ['verify', 'a.borefolio', '--json']);
    expect(JSON.parse(json.join('\n'))).toMatchObject({
      broken: [],
      papers: 2,
      unsound: [{ id, number: 'KV-25-011', paper: 1 }, { paper: 2 }],
    });
  });

  it('names the first broken link by well and revision, and gives 1', async () => {
    await prepareSealing(folder);
    reviseWell();
    change(
      `DROP TRIGGER revision_is_written_once; UPDATE revision SET record = replace(record, 'KV-25-011', 'KV-25-012') WHERE number = 1`,
    );
    const { code, out } = await type(folder, ['verify', 'a.borefolio']);
    expect(code).toBe(1);
    expect(out[0]).toBe('First broken link: well KV-25-011, revision 1.');
    expect(out[1]).toContain('was changed outside the program');
    expect(out.at(-1)).toBe('1 broken of 9 revisions.');
    const { out: json } = await type(folder, ['verify', 'a.borefolio', '--json']);
    expect(JSON.parse(json.join('\n'))).toMatchObject({
      revisions: 9,
      broken: [{ number: 'KV-25-011', revision: 1 }],
    });
  });
});

describe('borefolio verify', () => {
  it('answers what is neither a paper nor an archive with 2', async () => {
    writeFileSync(path.join(folder, 'notes.txt'), 'depth 32 m');
    const neither = await type(folder, ['verify', 'notes.txt']);
    expect(neither).toMatchObject({ code: 2 });
    expect(neither.err[0]).toBe('notes.txt is neither a PDF nor an archive.');
    expect((await type(folder, ['verify'])).err[0]).toContain('Name a file');
    await type(folder, ['demo-archive', 'a.borefolio']);
    const both = await type(folder, ['verify', 'a.borefolio', '--archive', 'a.borefolio']);
    expect(both.err[0]).toContain('--archive goes with a PDF');
  });
});
