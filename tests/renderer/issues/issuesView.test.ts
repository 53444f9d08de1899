// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  all,
  button,
  clear,
  click,
  one,
  openFolder,
  said,
  settled,
  show,
  texts,
} from '../mounted.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import type { IdentityRow, IssueRow } from '../../../core/contract/issuesShape.ts';
import IssuesView from '../../../renderer/issues/IssuesView.svelte';

const fingerprint = Array(32).fill('A1').join(':');
const identity: IdentityRow = {
  fingerprint,
  name: 'Adéwa Tonou',
  validTo: '2030-01-01T00:00:00Z',
  selfSigned: true,
};
const issue: IssueRow = {
  number: 1,
  revision: 3,
  paper: 'as-built A4',
  languages: 'en',
  fileName: 'KA-012 as-built A4 rev 3.pdf',
  recordHash: '1'.repeat(64),
  issuedAt: '2025-03-01T10:00:00Z',
  seals: [],
};
const seal = { state: 'holds', name: 'Adéwa Tonou', role: 'Supervisor', fingerprint } as const;

let asked: { name: string; args: Record<string, unknown> }[];
let lines: IssueRow[];
let identities: IdentityRow[];
let refuses: string | undefined;
let hear: (event: { name: string; data: object }) => void;

/** Answers as the service does, from what is kept here. */
const host = {
  send(name: string, args: Record<string, unknown>) {
    asked.push({ name, args });
    if (refuses === name)
      return Promise.resolve({ ok: false, error: { code: 'x', sentence: 'Not done.' } });
    if (name === 'issues.make') lines = [issue];
    if (name === 'issues.seal') lines = [{ ...issue, seals: [{ ...seal, sentence: '' }] }];
    if (name === 'identities.make' || name === 'identities.take') identities = [identity];
    if (name === 'identities.remove') identities = [];
    const value = {
      'issues.list': lines,
      'identities.list': identities,
      'issues.make': lines[0],
      'issues.seal': lines[0],
      'identities.make': identity,
      'identities.take': identity,
      'seals.read': {
        number: 'KA-012',
        revision: 3,
        recordHash: '1'.repeat(64),
        held: 'same',
        state: 'whole',
        seals: [{ ...seal, sentence: '' }],
        sentence: '',
      },
    }[name];
    return Promise.resolve({ ok: true, value: value ?? null });
  },
  onEvent(listener: typeof hear) {
    hear = listener;
    return () => undefined;
  },
} as unknown as PageHost;

beforeEach(() => {
  [asked, lines, identities, refuses] = [[], [], [], undefined];
});
afterEach(clear);

async function lay(readOnly = false) {
  // What was typed would be made a revision first; nothing was here.
  show(IssuesView, { host, folder: openFolder({}, readOnly) });
  await settled();
}

const callOf = (name: string) => asked.find((one) => one.name === name)?.args;

async function fill(selector: string, text: string) {
  one(selector).value = text;
  one(selector).dispatchEvent(new Event('input', { bubbles: true }));
  await settled();
}

const submit = async (form: Element) => {
  (form as HTMLFormElement).requestSubmit();
  await settled();
};

describe('issued papers', () => {
  it('are made in the size and language chosen, and listed with who signed them', async () => {
    await lay(true);
    expect(said(document.body)).toContain('Nothing was issued yet.');
    lines = [{ ...issue, seals: [{ ...seal, sentence: '' }] }];
    hear({ name: 'issues.changed', data: { id: 'w' } });
    await settled();
    expect(texts('ol > li')[0]).toContain('No. 1, revision 3, 2025-03-01');
    expect(texts('.seal')[0]).toContain('Adéwa Tonou, Supervisor: holds');
    expect(button('Issue').disabled).toBe(true);
  });

  it('say why one was not made', async () => {
    refuses = 'issues.make';
    await lay();
    await click(button('Issue'));
    await expect.poll(() => all('[role=alert]').map(said)).toEqual(['Not done.']);
  });

  it('tell a seal that does not hold by words and not by colour alone', async () => {
    lines = [{ ...issue, seals: [{ ...seal, state: 'changed', sentence: '' }] }];
    await lay();
    expect(texts('.seal')[0]).toContain('does not hold: the file was changed');
  });
});

describe('signing', () => {
  it('begins with a certificate where there is none', async () => {
    lines = [issue];
    await lay();
    await click(one<HTMLButtonElement>(`[aria-label="Sign …: ${issue.fileName}"]`));
    expect(said(document.body)).toContain('No certificate on this computer yet.');
    const form = all('details form')[0]!;
    const [name, organisation, first, again] = [...form.querySelectorAll('input')];
    name!.value = ' Adéwa Tonou ';
    organisation!.value = '';
    first!.value = 'a long passphrase';
    again!.value = 'another';
    for (const input of [name!, first!, again!])
      input.dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
    expect(said(form)).toContain('The two passphrases are not alike.');
    again!.value = 'a long passphrase';
    again!.dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
    await submit(form);
    expect(callOf('identities.make')).toEqual({
      name: 'Adéwa Tonou',
      passphrase: 'a long passphrase',
    });
  });

  it('asks for the role and the passphrase, and forgets the passphrase', async () => {
    lines = [issue];
    identities = [identity];
    await lay();
    await click(one<HTMLButtonElement>(`[aria-label="Sign …: ${issue.fileName}"]`));
    await fill('li form input[type=password]', 'a long passphrase');
    refuses = 'issues.seal';
    await submit(one('li form'));
    expect(one('li form input[type=password]').value).toBe('');
    refuses = undefined;
    await fill('li form input[type=password]', 'a long passphrase');
    await submit(one('li form'));
    expect(callOf('issues.seal')).toEqual({
      id: 'w',
      number: 1,
      fingerprint,
      passphrase: 'a long passphrase',
      role: 'supervisor',
    });
    await expect.poll(() => said(document.body)).toContain('Signed by Adéwa Tonou.');
  });

  it('removes a certificate only after a question', async () => {
    lines = [issue];
    identities = [identity];
    await lay();
    await click(one<HTMLButtonElement>(`[aria-label="Sign …: ${issue.fileName}"]`));
    await click(button('Remove'));
    expect(callOf('identities.remove')).toBeUndefined();
    await click(button('Remove it'));
    expect(callOf('identities.remove')).toEqual({ fingerprint });
  });
});

describe('a paper that is brought', () => {
  it('is read, and said to be whole, of which well, and whether the archive has its record', async () => {
    await lay();
    const file = new File(['%PDF'], 'from the office.pdf', { type: 'application/pdf' });
    const chooser = one('section section input[type=file]');
    Object.defineProperty(chooser, 'files', { value: [file], configurable: true });
    chooser.dispatchEvent(new Event('change', { bubbles: true }));
    const status = () => said(one('section section [role=status]'));
    await expect.poll(status).toContain('Checked: from the office.pdf');
    expect(status()).toContain('It says that it shows KA-012, revision 3.');
    expect(status()).toContain('The archive has the same record.');
    expect(status()).toContain('Adéwa Tonou, Supervisor: holds');
    expect(callOf('seals.read')).toEqual({ pdf: 'JVBERg==' });
  });
});
