import { describe, expect, it } from 'vitest';
import { revisionNotes } from '../../../electron/service/revisionNotes.ts';
import { openFresh, retype, valueOf } from '../archive/sample.ts';
import { freshService, revise } from './sample.ts';

/** A well that was saved a number of times, its notes another each time. */
async function savedOften(times: number) {
  const archive = openFresh();
  const service = freshService(archive);
  const created = await service.call('wells.create', { record: { schemaVersion: 1 } });
  if (!created.ok) throw new Error('not created');
  const { id } = created.value;
  for (let at = 2; at <= times; at += 1)
    await revise(service, id, { schemaVersion: 1, identity: { id }, notes: `state ${at}` });
  return { archive, service, id };
}

describe('what a paper tells of a well’s history', () => {
  it('is nothing for a well that was saved once', async () => {
    const { archive, id } = await savedOften(1);
    expect(revisionNotes(archive, id, 1, 'en')).toEqual({ ok: true, value: [] });
  });

  it('is what changed in each revision, from the first', async () => {
    const { archive, id } = await savedOften(3);
    const notes = revisionNotes(archive, id, 3, 'en');
    expect(notes.ok && notes.value.map(({ number, changes }) => [number, ...changes])).toEqual([
      [1, 'First revision'],
      [2, 'Notes added: state 2'],
      [3, 'Notes: state 3 (was state 2)'],
    ]);
  });

  it('names who made a revision, and begins with why', async () => {
    const archive = openFresh();
    archive.create('w', { schemaVersion: 1 }, { author: 'Sena Abalo' });
    const { edit } = valueOf(retype(archive, 'w', { schemaVersion: 1, notes: 'dry' }));
    archive.save('w', edit, { reason: 'Seen in the dry season' });
    const notes = revisionNotes(archive, 'w', 2, 'en');
    expect(notes.ok && notes.value.map(({ by, changes }) => [by, ...changes])).toEqual([
      ['Sena Abalo', 'First revision'],
      [undefined, 'Seen in the dry season', 'Notes added: dry'],
    ]);
  });

  it('is bounded to the last four, and ends with the revision asked for', async () => {
    const { archive, id } = await savedOften(8);
    const numbers = (upTo: number) => {
      const notes = revisionNotes(archive, id, upTo, 'fr');
      return notes.ok && notes.value.map(({ number }) => number);
    };
    expect(numbers(8)).toEqual([5, 6, 7, 8]);
    expect(numbers(6)).toEqual([3, 4, 5, 6]);
  });

  it('is refused for a well that is not there', () => {
    expect(revisionNotes(openFresh(), 'none', 1, 'en').ok).toBe(false);
  });
});
