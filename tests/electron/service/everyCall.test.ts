import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import { callNames } from '../../../core/contract/check.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openPdf } from '../../reading/pdf.ts';
import { openFresh, record as sample, valueOf } from '../archive/sample.ts';
import { freshService, revise } from './sample.ts';

const record = sample as unknown as WellRecord;

let archive: Archive;
let service: Service;
let id: string;

const ask = <N extends CallName>(name: N, args: Takes<N>) => service.call(name, args);

async function given<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> {
  return valueOf(await ask(name, args)) as Gives<N>;
}

async function refusalOf<N extends CallName>(name: N, args: Takes<N>) {
  const answer = await ask(name, args);
  if (answer.ok) throw new Error(`${name} was answered`);
  return answer.error;
}

beforeEach(async () => {
  archive = openFresh();
  service = freshService(archive);
  ({ id } = await given('wells.create', { record }));
});

describe('each call of the service', () => {
  it('answers what it was asked of a well that is there', async () => {
    await revise(service, id, { ...record, notes: 'later' });
    expect(await given('wells.list', { search: 'lemo' })).toMatchObject([{ id, revision: 2 }]);
    expect(await given('wells.list', { search: 'nobody' })).toEqual([]);
    expect((await given('wells.open', { id })).record.notes).toBe('later');
    const first = await given('wells.openRevision', { id, revision: 1 });
    expect([first.revision, first.record.notes]).toEqual([1, undefined]);
    expect(first.record.identity?.number).toBe('KA-012');
    const history = await given('wells.revisions', { id });
    expect(history.map(({ revision }) => revision)).toEqual([1, 2]);
    expect(new Set(history.map(({ hash }) => hash)).size).toBe(2);
    expect(await given('archive.state', {})).toMatchObject({ wells: 1 });
    expect(await given('archive.check', {})).toMatchObject({ revisions: 2, broken: [], papers: 0 });
  });

  it('refuses a well or a revision that is not there, by its code and in a sentence', async () => {
    const lost = 'no-such-id';
    const refusals = [
      await refusalOf('wells.open', { id: lost }),
      await refusalOf('wells.openRevision', { id: lost, revision: 1 }),
      await refusalOf('wells.revisions', { id: lost }),
      await refusalOf('wells.desk', { id: lost }),
      await refusalOf('wells.edit', { id: lost, upon: 0, moves: [{ kind: 'edit', patch: [] }] }),
      await refusalOf('wells.save', { id: lost, upon: 0 }),
      await refusalOf('wells.leave', { id: lost, upon: 0 }),
      await refusalOf('papers.asBuilt', { id: lost, paper: 'A4' }),
      await refusalOf('papers.newest', { id: lost, language: 'en' }),
      await refusalOf('papers.layingOut', { id: lost }),
      await refusalOf('papers.committee', { id: lost, languages: ['en'] }),
    ];
    for (const { code, sentence } of refusals) {
      expect(code).toBe('noSuchWell');
      expect(sentence).toContain(lost);
      expect(sentence).toMatch(/Look for it in the list of wells\.$/);
    }
    expect((await refusalOf('wells.openRevision', { id, revision: 9 })).code).toBe(
      'noSuchRevision',
    );
  });

  it('tells nobody of a change that was refused or that changed nothing', async () => {
    const heard: string[] = [];
    service.onEvent(({ name }) => heard.push(name));
    await ask('wells.edit', { id, upon: 7, moves: [{ kind: 'edit', patch: [] }] });
    await ask('wells.save', { id: 'lost', upon: 0 });
    expect((await given('wells.save', { id, upon: 0 })).revision).toBe(1);
    expect(heard).toEqual([]);
  });

  it('shows a chain that was broken, by well and revision', async () => {
    const broken = [{ id, revision: 1, sentence: 'Revision 1 is missing.' }];
    const check = () => ({ ok: true, value: { revisions: 0, broken } }) as const;
    service = freshService({ ...archive, check });
    expect(await given('archive.check', {})).toMatchObject({ revisions: 0, broken });
  });

  it('says why nothing can be saved in an archive that is only to be read', async () => {
    service = freshService({ ...archive, readOnly: 'It is protected.' });
    expect(await given('archive.state', {})).toEqual({
      name: 'Kalo',
      wells: 1,
      readOnly: true,
      sentence: 'It is protected.',
    });
  });

  it('makes a paper of either size, with the revision that it shows and what is odd', async () => {
    const odd = { ...record, bore: { depthReached: 5 }, log: [{ from: 0, to: 9 }] };
    await revise(service, id, odd as WellRecord);
    for (const paper of ['A4', 'A3'] as const) {
      const { fileName, pdf, findings } = await given('papers.asBuilt', { id, paper });
      expect(fileName).toBe(`KA-012 as-built ${paper} rev 2.pdf`);
      expect(Buffer.from(pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
      expect(findings.map(({ path }) => path)).toContain('log[0]');
    }
  });

  it('tells what the as-built sheet says of its revision, so that the page can show it', async () => {
    await revise(service, id, { ...record, notes: 'later' } as WellRecord);
    const { revision, recordHash, revisions } = await given('papers.newest', {
      id,
      language: 'fr',
    });
    expect(revision).toBe(2);
    expect(revisions.map(({ number }) => number)).toEqual([1, 2]);
    const { pdf } = await given('papers.asBuilt', { id, paper: 'A4', language: 'fr' });
    const file = Buffer.from(pdf, 'base64');
    expect(file.includes(`<bfpaper:recordHash>${recordHash}<`)).toBe(true);
  });

  it('makes the laying-out sheet, named by its language where that is not English', async () => {
    const made = await given('papers.layingOut', { id, language: 'pt' });
    expect(made.fileName).toBe('KA-012 laying-out pt rev 1.pdf');
    expect(made.unrevised).toBe(false);
    expect(Buffer.from(made.pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
    expect((await given('papers.layingOut', { id })).fileName).toBe('KA-012 laying-out rev 1.pdf');
  });

  it('makes one print file of several wells, in the order asked for', async () => {
    const other = { ...record, identity: { ...record.identity, number: 'KA-013' } } as WellRecord;
    const { id: second } = await given('wells.create', { record: other });
    const made = await given('papers.batch', { ids: [second, id], paper: 'A4', language: 'fr' });
    expect(made).toMatchObject({ fileName: '2 wells as-built A4 fr.pdf', unrevised: 0 });
    const file = await openPdf(new Uint8Array(Buffer.from(made.pdf, 'base64')));
    const { info } = await file.getMetadata();
    expect((info as { Title: string }).Title).toBe('KA-013, KA-012');
    const lost = await refusalOf('papers.batch', { ids: [id, 'lost'], paper: 'A4' });
    expect(lost.code).toBe('noSuchWell');
  });

  it('makes the check page, named by its language where that is not English', async () => {
    const { fileName, pdf } = await given('papers.checkPage', { paper: 'A3', language: 'pt' });
    expect(fileName).toBe('check page A3 pt.pdf');
    expect(Buffer.from(pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
    expect((await given('papers.checkPage', { paper: 'A4' })).fileName).toBe('check page A4.pdf');
  });

  it('makes the sheet for the committee in one language or two, and side by side', async () => {
    const one = await given('papers.committee', { id, languages: ['en'] });
    expect(one.fileName).toBe('KA-012 committee rev 1.pdf');
    const two = await given('papers.committee', { id, languages: ['pt', 'fr'], paper: 'A3' });
    expect(two.fileName).toBe('KA-012 committee pt-fr rev 1.pdf');
    expect(Buffer.from(two.pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
  });

  it('gives one page of a paper as SVG, DXF or PNG, named by its page where there are several', async () => {
    const heads = { svg: '<?xml', png: '\x89PNG', dxf: '999' } as const;
    const mediaTypes = { svg: 'image/svg+xml', png: 'image/png', dxf: 'image/vnd.dxf' };
    for (const format of ['svg', 'png', 'dxf'] as const) {
      const wish = { kind: 'committee', languages: ['fr', 'en'] } as const;
      const asked = { id, paper: wish, page: 2, format, dpi: 40 };
      const { fileName, data, mediaType } = await given('papers.drawingFile', asked);
      expect(fileName).toBe(`KA-012 committee fr-en rev 1-2.${format}`);
      expect(mediaType).toBe(mediaTypes[format]);
      const head = Buffer.from(data, 'base64').toString('latin1', 0, 8).trimStart();
      expect(head.startsWith(heads[format])).toBe(true);
    }
    const wish = { kind: 'layingOut' } as const;
    const beyond = await refusalOf('papers.drawingFile', {
      id,
      paper: wish,
      page: 9,
      format: 'svg',
    });
    expect(beyond.code).toBe('noSuchPage');
  });

  it('keeps its turn after a call that threw', async () => {
    let calls = 0;
    const failing: Archive = {
      ...archive,
      create: (...args) => {
        calls += 1;
        if (calls === 1) throw new Error('inside');
        return archive.create(...args);
      },
    };
    service = freshService(failing);
    const another = { ...record, identity: { number: 'KA-099', id: '' } };
    const own = {
      ...record,
      identity: { number: 'X', id: '22222222-2222-4222-8222-222222222222' },
    };
    const asked = [ask('wells.create', { record: another }), ask('wells.create', { record: own })];
    const done = await Promise.allSettled(asked);
    expect(done.map(({ status }) => status)).toEqual(['rejected', 'fulfilled']);
    expect(await given('wells.list', { search: 'X' })).toHaveLength(1);
  });

  it('is there for every name that the contract lists', async () => {
    const wishes: readonly string[] = ['issues.make', 'papers.drawingFile'];
    for (const name of callNames) {
      const args = {
        id: 'lost',
        revision: 1,
        record: {},
        paper: wishes.includes(name) ? { kind: 'asBuilt', paper: 'A4' } : 'A4',
        page: 1,
        format: 'svg',
        hash: '',
        data: '',
        upon: 0,
        moves: [],
        filter: {},
        into: 'ags',
        ids: [],
        fileName: '',
        text: '',
        name: 'Adéwa',
        wish: {},
        passphrase: 'a long passphrase',
        file: '',
        pdf: '',
        number: 1,
        files: [],
        table: 0,
        mapping: {},
        choices: { known: 'leave' },
        template: {},
        logos: [],
      } as never;
      await expect(service.call(name, args)).resolves.toHaveProperty('ok');
    }
  });
});
