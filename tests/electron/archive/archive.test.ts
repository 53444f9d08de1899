import { hash } from 'node:crypto';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, record, revise, valueOf } from './sample.ts';

describe('an archive', () => {
  it('keeps every key of a record as it was given', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    expect(JSON.stringify(valueOf(archive.open('a')).document)).toBe(JSON.stringify(record));
    archive.close();
  });

  it('lists wells by district and number, with depth only where it is known', () => {
    const archive = openFresh();
    valueOf(archive.create('b', { schemaVersion: 1, site: { district: 'Zou' } }));
    valueOf(archive.create('a', record));
    expect(valueOf(archive.list())).toEqual([
      expect.objectContaining({ id: 'a', number: 'KA-012', depthM: 31.5, state: 'completed' }),
      {
        id: 'b',
        number: '',
        name: '',
        district: 'Zou',
        village: '',
        state: '',
        revision: 1,
        unrevised: false,
        changedAt: '2025-03-01T08:00:00.000Z',
      },
    ]);
    archive.close();
  });

  it('takes the depth from the sections or the log where none was written', () => {
    const archive = openFresh();
    valueOf(
      archive.create('a', { bore: { sections: [{ to: 12 }, { to: 30 }] }, log: [{ to: 31 }] }),
    );
    valueOf(archive.create('b', { log: [{ to: 7 }, { to: 'deep' }] }));
    expect(valueOf(archive.list()).map(({ depthM }) => depthM)).toEqual([30, 7]);
    archive.close();
  });

  it('makes no revision of a record that did not change', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    expect(valueOf(archive.save('a', 0)).revision).toBe(1);
    expect(valueOf(revise(archive, 'a', record)).revision).toBe(1);
    expect(valueOf(archive.revisions('a'))).toHaveLength(1);
    archive.close();
  });

  it('opens a well as it was at any revision', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    valueOf(revise(archive, 'a', { ...record, notes: 'later' }));
    expect(valueOf(archive.openRevision('a', 1)).document).toEqual(record);
    expect(archive.openRevision('a', 3)).toMatchObject({ error: { code: 'noSuchRevision' } });
    archive.close();
  });

  it('says so when there is no such well, or one too many', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    expect(archive.open('x')).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(archive.save('x', 0)).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(archive.revisions('x')).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(archive.create('a', record)).toMatchObject({ error: { code: 'wellExists' } });
    archive.close();
  });
});

describe('the search', () => {
  const found = (search: string) => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    valueOf(archive.create('b', { identity: { number: 'KA-013', name: 'Clinic' } }));
    const ids = valueOf(archive.list(search)).map(({ id }) => id);
    archive.close();
    return ids;
  };

  it('finds by number, name, place, people and remark, from the start of a word', () => {
    expect(found('KA-01')).toEqual(['b', 'a']);
    expect(found('ka 012')).toEqual(['a']);
    expect(found('clin')).toEqual(['b']);
    expect(found('market')).toEqual(['a']);
    expect(found('tonou')).toEqual(['a']);
    expect(found('termite')).toEqual(['a']);
  });

  it('finds with and without accents', () => {
    expect(found('lemo')).toEqual(['a']);
    expect(found('LÉMO')).toEqual(['a']);
    expect(found('le\u0301mo')).toEqual(['a']);
  });

  it('wants every word', () => {
    expect(found('lemo clinic')).toEqual([]);
  });

  it('takes signs of the query language as text', () => {
    expect(found('lemo" OR "clinic')).toEqual([]);
    expect(found('NOT (')).toEqual([]);
    expect(found('***')).toEqual([]);
  });

  it('follows a change', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    valueOf(revise(archive, 'a', { schemaVersion: 1, identity: { name: 'Health post' } }));
    expect(valueOf(archive.list('lemo'))).toEqual([]);
    expect(valueOf(archive.list('health'))).toHaveLength(1);
    archive.close();
  });
});

describe('the chain of revisions', () => {
  function threeRevisions() {
    const archive = openFresh();
    valueOf(archive.create('a', { schemaVersion: 1, notes: 'one' }));
    valueOf(revise(archive, 'a', { schemaVersion: 1, notes: 'two' }));
    valueOf(revise(archive, 'a', { schemaVersion: 1, notes: 'three' }));
    valueOf(archive.create('b', { notes: 'other' }));
    return archive;
  }

  function brokenAfter(sql: string) {
    const archive = threeRevisions();
    archive.close();
    const db = new Database(archive.file);
    db.exec(
      `DROP TRIGGER revision_is_written_once; DROP TRIGGER revision_goes_with_its_well; ${sql}`,
    );
    db.close();
    const again = valueOf(openArchive(archive.file, countingWorld()));
    const { broken } = valueOf(again.check());
    again.close();
    return broken.map(({ id, revision, sentence }) => `${id} ${revision} ${sentence}`);
  }

  it('is whole when nothing was touched', () => {
    const archive = threeRevisions();
    expect(valueOf(archive.check())).toEqual({ revisions: 4, broken: [] });
    archive.close();
  });

  it('is SHA-256 over the hash before and the revision', () => {
    const archive = threeRevisions();
    const [first, second] = valueOf(archive.revisions('a'));
    const link = [first!.hash, 'a', 2, second!.changedAt, '{"schemaVersion":1,"notes":"two"}'];
    expect(second!.hash).toBe(hash('sha256', JSON.stringify(link)));
    archive.close();
  });

  it('shows a record that was changed from outside', () => {
    expect(
      brokenAfter(`UPDATE revision SET record = '{}' WHERE well_id = 'a' AND number = 2`),
    ).toEqual([expect.stringMatching(/^a 2 Revision 2 is not what was saved/)]);
  });

  it('shows a hash that was made to fit at the next revision', () => {
    const forged = hash('sha256', 'anything');
    expect(
      brokenAfter(`UPDATE revision SET hash = '${forged}' WHERE well_id = 'a' AND number = 1`),
    ).toEqual([expect.stringMatching(/^a 1 /), expect.stringMatching(/^a 2 /)]);
  });

  it('shows a revision that was taken out, in the middle or at the end', () => {
    const middle = brokenAfter(`DELETE FROM revision WHERE well_id = 'a' AND number = 2`);
    expect(middle).toEqual([expect.stringMatching(/^a 2 Revision 2 is missing/)]);
    const end = brokenAfter(`DELETE FROM revision WHERE well_id = 'a' AND number = 3`);
    expect(end).toEqual([expect.stringMatching(/^a 3 Revision 3 is missing/)]);
  });
});
