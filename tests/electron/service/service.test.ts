import { describe, expect, it } from 'vitest';
import type { Answer, CallName, Gives } from '../../../core/contract/calls.ts';
import { deskAfter } from '../../../core/record/desk.ts';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { answerCall } from '../../../electron/service/answer.ts';
import { openFresh, record as sample, valueOf } from '../archive/sample.ts';
import { freshService, retype } from './sample.ts';

const record = sample as unknown as WellRecord;

function given<N extends CallName>(answer: Answer<N>): Gives<N> {
  return valueOf(answer) as Gives<N>;
}

describe('the service', () => {
  it('gives a new well an id that its record carries', async () => {
    const service = freshService();
    const created = given(await service.call('wells.create', { record }));
    expect(created).toMatchObject({ id: '00000000-0000-4000-8000-000000000001', revision: 1 });
    expect(created.record.identity?.id).toBe(created.id);
    expect(given(await service.call('wells.list', {}))).toHaveLength(1);
  });

  it('keeps the id that a record came with, and takes it once', async () => {
    const service = freshService();
    const id = '11111111-1111-4111-8111-111111111111';
    const own = { ...record, identity: { ...record.identity, id } };
    expect(given(await service.call('wells.create', { record: own })).id).toBe(id);
    const twice = await service.call('wells.create', { record: own });
    expect(twice).toMatchObject({ error: { code: 'wellExists' } });
  });

  it('keeps half-typed work with its troubles and gives it back whole', async () => {
    const service = freshService();
    const { id } = given(await service.call('wells.create', { record }));
    const half = { ...record, bore: { depthReached: '31,5' } } as unknown as WellRecord;
    const kept = given(await retype(service, id, half));
    expect(kept).toMatchObject({ edit: 1, unrevised: true });
    expect(kept.troubles).toEqual([
      {
        path: 'bore.depthReached',
        sentence: expect.stringMatching(/^bore\.depthReached: /),
        code: 'wrongKind',
        values: expect.objectContaining({ found: '"31,5"' }),
      },
    ]);
    const saved = given(await service.call('wells.save', { id, upon: 1 }));
    expect(saved.revision).toBe(2);
    const opened = given(await service.call('wells.open', { id }));
    expect(opened.record.bore?.depthReached).toBeUndefined();
    expect(opened.document).toMatchObject({ bore: { depthReached: '31,5' } });
    expect(opened.troubles).toEqual(kept.troubles);
    expect(saved.troubles).toEqual(kept.troubles);
  });

  it('tells with an edit what contradicts itself beside the findings', async () => {
    const service = freshService();
    const { id } = given(await service.call('wells.create', { record }));
    const development = [{ startedAt: '2026-03-04', endedAt: '2026-03-01' }];
    const kept = given(await retype(service, id, { ...record, development }));
    expect(kept.troubles.map(({ path }) => path)).toEqual(['development[0].endedAt']);
  });

  it('opens a well with the working copy from its opening on, and gives the desk alone', async () => {
    const service = freshService();
    const { id, working } = given(await service.call('wells.create', { record }));
    expect(working).toMatchObject({ moves: [], edit: 0, unrevised: false });
    await retype(service, id, { ...record, notes: 'typed' });
    const opened = given(await service.call('wells.open', { id }));
    expect([opened.revision, opened.record.notes]).toEqual([1, undefined]);
    expect(opened.working.base).toEqual(working.base);
    expect(deskAfter(opened.working.base, opened.working.moves).record.notes).toBe('typed');
    const desk = given(await service.call('wells.desk', { id }));
    expect(desk).toMatchObject({ edit: 1, revision: 1, unrevised: true });
    expect(desk.desk.record.notes).toBe('typed');
    await service.call('wells.leave', { id, upon: 1 });
    const again = given(await service.call('wells.open', { id }));
    expect(again.working).toMatchObject({ base: desk.desk, moves: [], edit: 1 });
  });

  it('keeps keys that it does not know', async () => {
    const service = freshService();
    const { id } = given(await service.call('wells.create', { record }));
    const { document } = given(await service.call('wells.open', { id }));
    expect(document['fromNewer']).toEqual({ kept: [1, { as: 'given' }] });
  });

  it('refuses a record of a newer version, with its sentence', async () => {
    const newer = { schemaVersion: 999 } as unknown as WellRecord;
    const answer = await freshService().call('wells.create', { record: newer });
    expect(answer).toMatchObject({ error: { code: 'recordTooNew' } });
  });

  it('refuses to put one well over another', async () => {
    const service = freshService();
    const { id, document } = given(await service.call('wells.create', { record }));
    const other = given(await service.call('wells.create', { record }));
    const answer = await retype(service, other.id, document as WellRecord);
    expect(answer).toMatchObject({ error: { code: 'otherWell' } });
    if (!answer.ok) expect(answer.error.sentence).toContain(id);
  });

  it('tells every listener of a change until it stops listening', async () => {
    const service = freshService();
    const heard: HostEvent[] = [];
    const stop = service.onEvent((event) => heard.push(event));
    const { id } = given(await service.call('wells.create', { record }));
    await retype(service, id, { ...record, notes: 'x' });
    await service.call('wells.save', { id, upon: 1 });
    await service.call('wells.save', { id, upon: 0 });
    await service.call('wells.save', { id, upon: 1 });
    stop();
    await retype(service, id, record);
    expect(heard.map(({ name }) => name)).toEqual(heard.map(() => 'well.changed'));
    expect(heard.map(({ data }) => data)).toMatchObject([
      { id, revision: 1, edit: 0, unrevised: false },
      { id, revision: 1, edit: 1, unrevised: true },
      { id, revision: 2, edit: 1, unrevised: false },
    ]);
  });

  it('lets one of two edits upon the same edit through', async () => {
    const service = freshService();
    const { id } = given(await service.call('wells.create', { record }));
    const answers = await Promise.all(
      ['one', 'two'].map((notes) =>
        service.call('wells.edit', {
          id,
          upon: 0,
          moves: [{ kind: 'edit', patch: [{ at: ['record', 'notes'], to: notes }] }],
        }),
      ),
    );
    expect(answers.map(({ ok }) => ok)).toEqual([true, false]);
  });

  it('says what the archive is called and how many wells it holds', async () => {
    const service = freshService();
    await service.call('wells.create', { record });
    expect(given(await service.call('archive.state', {}))).toEqual({
      name: 'Kalo',
      wells: 1,
      readOnly: false,
    });
    expect(given(await service.call('archive.check', {}))).toEqual({
      ...{ revisions: 1, broken: [] },
      ...{ papers: 0, unsound: [] },
    });
  });

  it('makes the as-built sheet as a PDF, the same twice', async () => {
    const service = freshService();
    const { id } = given(await service.call('wells.create', { record }));
    const sheet = given(await service.call('papers.asBuilt', { id, paper: 'A4' }));
    expect(sheet.fileName).toBe('KA-012 as-built A4 rev 1.pdf');
    expect(Buffer.from(sheet.pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
    expect(sheet.unrevised).toBe(false);
    const again = given(await service.call('papers.asBuilt', { id, paper: 'A4' }));
    expect(again.pdf).toBe(sheet.pdf);
    await retype(service, id, { ...record, notes: 'typed after it' });
    const older = given(await service.call('papers.asBuilt', { id, paper: 'A4' }));
    expect([older.pdf, older.unrevised]).toEqual([sheet.pdf, true]);
  });
});

describe('the answer of a host', () => {
  const ignore = () => undefined;

  it('is a refusal for a call that is unknown or ill-formed', async () => {
    const service = freshService();
    expect(await answerCall(service, 'wells.burn', {}, ignore)).toMatchObject({ ok: false });
    expect(await answerCall(service, 'wells.open', { id: 7 }, ignore)).toMatchObject({
      error: { code: 'badArguments' },
    });
  });

  it('is a sentence for what the program threw, which is reported', async () => {
    const archive = openFresh();
    const failing = {
      ...archive,
      list: () => {
        throw new Error('inside');
      },
    };
    const reported: unknown[] = [];
    const answer = await answerCall(freshService(failing), 'wells.list', {}, (...said) =>
      reported.push(said),
    );
    expect(answer).toMatchObject({ ok: false, error: { code: 'defect' } });
    expect(JSON.stringify(answer)).not.toContain('inside');
    expect(reported).toEqual([['wells.list', expect.objectContaining({ message: 'inside' })]]);
  });
});
