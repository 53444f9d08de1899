import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

const passphrase = 'a long passphrase';
const record = {
  schemaVersion: 1,
  identity: { number: 'KA-012', state: 'laidOut' },
  bore: { depthReached: 30 },
} as const;

let archive: Archive;
let service: Service;
let id: string;

async function given<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> {
  return valueOf(await service.call(name, args)) as Gives<N>;
}

/** Issues a paper, and seals it as often as is asked. */
async function issue(seals: readonly ('supervisor' | 'client')[] = []): Promise<number> {
  const { number } = await given('issues.make', { id, paper: { kind: 'asBuilt', paper: 'A4' } });
  const { fingerprint } = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
  for (const role of seals)
    await given('issues.seal', { id, number, fingerprint, passphrase, role });
  return number;
}

/** Changes the file as another program could. */
function change(sql: string): void {
  const db = new Database(archive.file);
  db.function('spoiled', (bytes, at) => {
    const copy = Buffer.from(bytes as Uint8Array);
    copy[Number(at)]! ^= 1;
    return copy;
  });
  db.exec(sql);
  db.close();
}

beforeEach(async () => {
  archive = openFresh();
  service = freshService(archive);
  id = (await given('wells.create', { record })).id;
});

describe('going through the issued papers', () => {
  it('finds them whole as they were issued and sealed', async () => {
    await issue(['supervisor', 'client']);
    await issue();
    expect(await given('archive.check', {})).toEqual({
      revisions: 1,
      broken: [],
      papers: 2,
      unsound: [],
    });
  });

  it('names a paper of which a byte is another, sealed or not', async () => {
    await issue();
    await issue(['client']);
    change(
      'DROP TRIGGER issue_is_written_once; UPDATE issue SET pdf = spoiled(pdf, 4000) WHERE number = 1',
    );
    const { unsound } = await given('archive.check', {});
    expect(unsound).toMatchObject([
      { id, paper: 1, revision: 1, fileName: 'KA-012 as-built A4 rev 1.pdf' },
    ]);
    expect(unsound[0]!.sentence).toContain('not what was issued');
  });

  it('judges a paper whose hash was not kept yet by its seals', async () => {
    await issue(['client']);
    change(`DROP TRIGGER issue_is_written_once; UPDATE issue SET pdf_hash = NULL`);
    expect((await given('archive.check', {})).unsound).toEqual([]);
    change('UPDATE issue SET pdf = spoiled(pdf, 4000)');
    const { unsound } = await given('archive.check', {});
    expect(unsound[0]!.sentence).toContain('was changed since it was sealed');
  });

  it('names a paper of which a seal is spoiled or lost', async () => {
    await issue(['supervisor', 'client']);
    change(
      'DROP TRIGGER issue_seal_is_written_once; UPDATE issue_seal SET added = spoiled(added, 900) WHERE seal = 1',
    );
    expect((await given('archive.check', {})).unsound).toHaveLength(1);
    change(`UPDATE issue_seal SET added = spoiled(added, 900) WHERE seal = 1;
      UPDATE issue_seal SET added = X'0A' WHERE seal = 2`);
    const { unsound } = await given('archive.check', {});
    expect(unsound[0]!.sentence).toContain('sealed 2 times, and bears 1 seal');
  });

  it('names a paper that shows another record than its revision has', async () => {
    await issue();
    change(
      `DROP TRIGGER revision_is_written_once; UPDATE revision SET record = replace(record, 'KA-012', 'KA-013')`,
    );
    const { broken, unsound } = await given('archive.check', {});
    expect(broken).toHaveLength(1);
    expect(unsound[0]!.sentence).toContain('Revision 1 is not the record that it shows');
    change('DROP TRIGGER revision_goes_with_its_well; DELETE FROM revision');
    const gone = (await given('archive.check', {})).unsound[0]!;
    expect(gone.sentence).toContain('Revision 1, which it shows, is missing');
  });

  it('names a paper whose file is of another record than it was issued of', async () => {
    await issue();
    change(
      `DROP TRIGGER issue_is_written_once; UPDATE issue SET record_hash = '${'0'.repeat(64)}'`,
    );
    const { unsound } = await given('archive.check', {});
    expect(unsound[0]!.sentence).toContain('does not name the record');
  });

  it('finds a paper whole that came from an archive with the well under another id', async () => {
    await issue(['client']);
    const ours = openFresh();
    valueOf(ours.create('our-id', { ...record, identity: { ...record.identity, id: 'our-id' } }));
    const plan = valueOf(ours.merging.look(archive.file));
    expect(plan.steps).toMatchObject([]);
    valueOf(ours.merging.take(archive.file, {}, { author: '', name: 'Other' }));
    service = freshService(ours);
    const { papers, unsound } = await given('archive.check', {});
    expect({ papers, unsound }).toEqual({ papers: 1, unsound: [] });
  });
});
