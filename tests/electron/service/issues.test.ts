import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import type { CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { writeValues } from '../../../core/record/explained.ts';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import type { Service } from '../../../electron/service/service.ts';
import { openPdf } from '../../reading/pdf.ts';
import { openFresh, valueOf } from '../archive/sample.ts';
import { freshService, retype, revise } from './sample.ts';

const passphrase = 'a long passphrase';
const good: WellRecord = {
  schemaVersion: 1,
  identity: { number: 'KA-012', name: 'Lémo school', state: 'laidOut' },
  bore: { depthReached: 30 },
};
/** A section of the hole that ends below its depth: an error. */
const wrong: WellRecord = {
  ...good,
  bore: { depthReached: 30, sections: [{ from: 0, to: 34, diameter: 165 }] },
};

let archive: Archive;
let service: Service;

const ask = <N extends CallName>(name: N, args: Takes<N>) => service.call(name, args);

async function given<N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> {
  return valueOf(await ask(name, args)) as Gives<N>;
}

async function refusalOf<N extends CallName>(name: N, args: Takes<N>) {
  const answer = await ask(name, args);
  if (answer.ok) throw new Error(`${name} was answered`);
  return answer.error;
}

const paper = { kind: 'asBuilt', paper: 'A4' } as const;
const wellOf = async (record: WellRecord) => (await given('wells.create', { record })).id;
/** What stands on the first page. */
async function wordsOf(pdf: string): Promise<string> {
  const { items } = await (
    await (await openPdf(new Uint8Array(bytesOf(pdf)))).getPage(1)
  ).getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join(' ');
}

const bytesOf = (base64: string) => Buffer.from(base64, 'base64');

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

describe('a paper that is issued', () => {
  it('is kept as it was made, while the record goes on', async () => {
    const id = await wellOf(good);
    const issue = await given('issues.make', { id, paper });
    expect(issue).toMatchObject({
      number: 1,
      revision: 1,
      paper: 'as-built A4',
      languages: 'en',
      fileName: 'KA-012 as-built A4 rev 1.pdf',
      seals: [],
    });
    const { pdf } = await given('issues.pdf', { id, number: 1 });
    valueOf(await revise(service, id, { ...good, notes: 'later' }));
    expect((await given('issues.pdf', { id, number: 1 })).pdf).toBe(pdf);
    const layingOut = { kind: 'layingOut', language: 'fr' } as const;
    expect(await given('issues.make', { id, paper: layingOut })).toMatchObject({
      number: 2,
      revision: 2,
      paper: 'laying-out',
      languages: 'fr',
    });
    expect((await given('issues.list', { id })).map(({ revision }) => revision)).toEqual([1, 2]);
  });

  it('says that it is issued, as no other paper does', async () => {
    const id = await wellOf(good);
    await given('issues.make', { id, paper });
    const issued = await wordsOf((await given('issues.pdf', { id, number: 1 })).pdf);
    expect(issued).toContain('laid out, not built, issued');
    const exported = await wordsOf((await given('papers.asBuilt', { id, paper: 'A4' })).pdf);
    expect(exported).toContain('laid out, not built, not issued');
  });

  it('is refused while something typed is in no revision', async () => {
    const id = await wellOf(good);
    valueOf(await retype(service, id, { ...good, notes: 'typed' }));
    expect((await refusalOf('issues.make', { id, paper })).code).toBe('unrevised');
    expect(await given('issues.list', { id })).toEqual([]);
  });

  it('is refused while an error stands that nobody explained, and names it', async () => {
    const id = await wellOf(wrong);
    const refusal = await refusalOf('issues.make', { id, paper });
    expect(refusal.code).toBe('unexplained');
    expect(refusal.sentence).toMatch(/^\d+ of the gravest findings .*34/);
    const errors = resolveWell(wrong).findings.filter(({ severity }) => severity === 'error');
    const explanations = errors.map((finding) => ({
      code: finding.code,
      path: finding.path,
      values: writeValues(finding),
      because: 'Filled again to 30 m.',
    }));
    valueOf(await revise(service, id, { ...wrong, explanations }));
    expect((await given('issues.make', { id, paper })).revision).toBe(2);
  });

  it('tells every page', async () => {
    const id = await wellOf(good);
    const heard: unknown[] = [];
    service.onEvent((event) => heard.push(event));
    await given('issues.make', { id, paper });
    expect(heard).toEqual([{ name: 'issues.changed', data: { id } }]);
  });
});

describe('a certificate', () => {
  it('is made, listed without its key, and removed', async () => {
    const made = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
    expect(made).toMatchObject({ name: 'Adéwa Tonou', selfSigned: true });
    expect(await given('identities.list', {})).toEqual([made]);
    await given('identities.remove', { fingerprint: made.fingerprint });
    expect(await given('identities.list', {})).toEqual([]);
  });

  it('is not made from too short a passphrase, nor taken from a file that is none', async () => {
    const short = await refusalOf('identities.make', { name: 'A', passphrase: 'short' });
    expect(short.code).toBe('shortPassphrase');
    const file = Buffer.from('no file of this kind').toString('base64');
    const none = await refusalOf('identities.take', { file, passphrase });
    expect(none.code).toBe('notAnIdentity');
  });
});

describe('an issued paper that is signed', () => {
  it('shows each signature in the free box of its role, and keeps the earlier ones', async () => {
    const id = await wellOf(good);
    await given('issues.make', { id, paper });
    const { pdf } = await given('issues.pdf', { id, number: 1 });
    const { fingerprint } = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
    const call = { id, number: 1, fingerprint, passphrase, role: 'supervisor' } as const;
    await given('issues.seal', { ...call, place: 'Lémo' });
    const issue = await given('issues.seal', { ...call, role: 'client' });
    expect(issue.seals).toMatchObject([
      { state: 'holds', name: 'Adéwa Tonou', role: 'Supervisor' },
      { state: 'holds', name: 'Adéwa Tonou', role: 'Client' },
    ]);
    const signed = bytesOf((await given('issues.pdf', { id, number: 1 })).pdf);
    expect(signed.subarray(0, bytesOf(pdf).length).equals(bytesOf(pdf))).toBe(true);
    expect(signed.toString('latin1').match(/\/Subtype \/Widget/g)).toHaveLength(2);
  });

  it('shows each signature in its box on the laying-out sheet and on the committee’s', async () => {
    const id = await wellOf(good);
    const { fingerprint } = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
    const asked = [
      [{ kind: 'layingOut' }, ['contractor', 'supervisor']],
      [{ kind: 'committee', languages: ['en', 'fr'] }, ['committee', 'contractor', 'supervisor']],
    ] as const;
    for (const [wish, roles] of asked) {
      const { number } = await given('issues.make', { id, paper: wish });
      for (const role of roles)
        await given('issues.seal', { id, number, fingerprint, passphrase, role });
      const { pdf } = await given('issues.pdf', { id, number });
      const { state, seals } = readSeals(new Uint8Array(bytesOf(pdf)));
      expect(state).toBe('whole');
      const boxes = seals.map(({ box }) => box!);
      // A box of the sheet, in millimetres; where none is free, a seal is a point.
      for (const { width, height } of boxes) expect([width > 30, height > 5]).toEqual([true, true]);
      expect(new Set(boxes.map(({ page, x, y }) => `${page} ${x} ${y}`)).size).toBe(roles.length);
    }
    expect((await given('archive.check', {})).unsound).toEqual([]);
  });

  it('is not signed with a wrong passphrase or a certificate that is not here', async () => {
    const id = await wellOf(good);
    await given('issues.make', { id, paper });
    const { fingerprint } = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
    const call = { id, number: 1, fingerprint, passphrase: 'another', role: 'client' } as const;
    expect((await refusalOf('issues.seal', call)).code).toBe('wrongPassphrase');
    const other = { ...call, fingerprint: Array(32).fill('00').join(':') };
    expect((await refusalOf('issues.seal', other)).code).toBe('noSuchIdentity');
    expect((await refusalOf('issues.seal', { ...call, number: 2 })).code).toBe('noSuchIssue');
    expect((await given('issues.list', { id }))[0]!.seals).toEqual([]);
  });
});

describe('a paper that somebody brings', () => {
  async function signedPaper() {
    const id = await wellOf(good);
    await given('issues.make', { id, paper });
    const { fingerprint } = await given('identities.make', { name: 'Adéwa Tonou', passphrase });
    await given('issues.seal', { id, number: 1, fingerprint, passphrase, role: 'client' });
    return { id, pdf: (await given('issues.pdf', { id, number: 1 })).pdf };
  }

  it('says its well and revision, who signed, and that the archive has the same record', async () => {
    const { id, pdf } = await signedPaper();
    valueOf(await revise(service, id, { ...good, notes: 'later' }));
    expect(await given('seals.read', { pdf })).toMatchObject({
      number: 'KA-012',
      revision: 1,
      held: 'same',
      wellId: id,
      state: 'whole',
      seals: [{ state: 'holds', name: 'Adéwa Tonou' }],
    });
  });

  it('is unknown to an archive without its well, and another record to one with', async () => {
    const { pdf } = await signedPaper();
    service = freshService(openFresh());
    expect((await given('seals.read', { pdf })).held).toBe('unknown');
    const id = await wellOf({ ...good, notes: 'of another hand' });
    expect(await given('seals.read', { pdf })).toMatchObject({ held: 'other', wellId: id });
  });

  it('is told to be changed when a byte is', async () => {
    const { pdf } = await signedPaper();
    const bytes = bytesOf(pdf);
    bytes[2000]! ^= 1;
    const found = await given('seals.read', { pdf: bytes.toString('base64') });
    expect(found.state).toBe('changed');
    expect(found.seals[0]!.state).toBe('changed');
  });

  it('may be no paper of ours', async () => {
    const pdf = Buffer.from('%PDF-1.7').toString('base64');
    const found = await given('seals.read', { pdf });
    expect(found).toMatchObject({ state: 'none', seals: [] });
    expect(found.held).toBeUndefined();
  });
});
