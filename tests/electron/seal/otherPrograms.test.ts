import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { composeSeal } from '../../../electron/seal/pdf/composeSeal.ts';
import { readDocument } from '../../../electron/seal/pdf/document.ts';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import { valueOf } from '../archive/sample.ts';
import { inFolder, pdfsigSays } from './otherReaders.ts';
import { detailsOf, now, paper, signerCalled } from './sealed.ts';

/** A signature’s field and place, as another program may write them: without the own mark. */
function prepared(pdf: Uint8Array) {
  const document = readDocument(pdf);
  const text = { name: 'Tomé Vasikora', role: 'laboratory', at: now, room: 4096 };
  const { update, gap } = composeSeal(document, text);
  return { text: document.text + update.replace('/Name /Borefolio', '/Name /Otherwise'), gap };
}

/** Signs with openssl and a certificate that it makes. */
function signedByOpenssl(pdf: Uint8Array, kind: string): Uint8Array {
  const { text, gap } = prepared(pdf);
  const covered = Buffer.from(text.slice(0, gap.start) + text.slice(gap.end), 'latin1');
  const der = inFolder({ covered }, (folder) => {
    const openssl = (words: string) =>
      execFileSync('openssl', words.split(' '), { cwd: folder, stdio: 'pipe' });
    openssl(`req -x509 -newkey ${kind} -nodes -keyout k.pem -out c.pem -days 9 -subj /CN=Tome`);
    openssl(
      'cms -sign -binary -cades -md sha384 -signer c.pem -inkey k.pem -in covered -outform DER -out sig',
    );
    return readFileSync(path.join(folder, 'sig'));
  });
  const digits = der
    .toString('hex')
    .toUpperCase()
    .padEnd(gap.end - gap.start - 2, '0');
  const signed = `${text.slice(0, gap.start + 1)}${digits}${text.slice(gap.end - 1)}`;
  return new Uint8Array(Buffer.from(signed, 'latin1'));
}

let signed: Uint8Array;
beforeAll(() => {
  signed = signedByOpenssl(paper(), 'rsa:2048');
});

describe('a signature that another program made', () => {
  it.each(['rsa:2048', 'ec -pkeyopt ec_paramgen_curve:P-384'])('holds: %s', (kind) => {
    const other = signedByOpenssl(paper(), kind);
    expect(pdfsigSays(other).validations).toEqual(['Signature is Valid.']);
    const found = readSeals(other);
    expect(found.state).toBe('whole');
    expect(found.seals[0]).toMatchObject({ name: 'Tome', role: 'laboratory', selfSigned: true });
  });

  it('does not hold after a change, nor with something behind it in its place', () => {
    const changed = Uint8Array.from(signed);
    changed[3000]! ^= 1;
    expect(readSeals(changed).state).toBe('changed');
    const hidden = Buffer.from(signed);
    hidden.write('1', hidden.toString('latin1').lastIndexOf('0>\n>>'), 'latin1');
    expect(readSeals(new Uint8Array(hidden)).state).toBe('changed');
  });

  it('may stand below a seal of this program', async () => {
    const signer = await signerCalled('Ama Dravunké');
    const found = readSeals(valueOf(sealPdf(signed, signer, detailsOf(0))));
    expect(found.state).toBe('whole');
    expect(found.seals.map(({ state }) => state)).toEqual(['holds', 'holds']);
  });

  it('cannot be told from anything else that was added on top of a seal', async () => {
    const signer = await signerCalled('Ama Dravunké');
    const sealed = valueOf(sealPdf(paper(), signer, detailsOf(0)));
    const found = readSeals(signedByOpenssl(sealed, 'rsa:2048'));
    expect(found.seals.map(({ state }) => state)).toEqual(['addedTo', 'holds']);
    expect(found.sentence).toContain('something else than a seal was added between them');
  });
});
