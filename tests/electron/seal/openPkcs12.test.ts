import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPkcs12 } from '../../../electron/seal/openPkcs12.ts';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import { valueOf } from '../archive/sample.ts';
import { opensslSays, pdfsigSays, signaturesIn } from './otherReaders.ts';
import { now, paper } from './sealed.ts';

/** Files that openssl makes, as a signer may bring them. */
let folder: string;
/** Certificates made now are valid from now on. */
let later: string;
const secret = 'água do poço';

const openssl = (words: string) =>
  execFileSync('openssl', words.split(' '), {
    cwd: folder,
    stdio: 'pipe',
    env: { ...process.env, SECRET: secret },
  });
const bytesOf = (name: string) => new Uint8Array(readFileSync(path.join(folder, name)));

const kinds = { ecdsa: 'ec -pkeyopt ec_paramgen_curve:P-256', rsa: 'rsa:3072' } as const;

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'borefolio-p12-'));
  later = new Date(Date.now() + 60_000).toISOString();
  for (const [kind, words] of Object.entries(kinds))
    openssl(
      `req -x509 -newkey ${words} -nodes -keyout ${kind}.key -out ${kind}.pem -days 30 -subj /CN=Ama_Dravunke`,
    );
  openssl(
    'req -newkey ec -pkeyopt ec_paramgen_curve:P-384 -nodes -keyout issued.key -out issued.csr -subj /O=Oficina/CN=Tome_Vasikora',
  );
  openssl(
    'x509 -req -in issued.csr -CA rsa.pem -CAkey rsa.key -CAcreateserial -days 20 -out issued.pem',
  );
  openssl(
    'req -x509 -newkey ed25519 -nodes -keyout other.key -out other.pem -days 30 -subj /CN=Other',
  );
  const pack = (name: string, more: string) =>
    openssl(`pkcs12 -export -passout env:SECRET -out ${name}.p12 ${more}`);
  for (const kind of ['ecdsa', 'rsa', 'other']) pack(kind, `-inkey ${kind}.key -in ${kind}.pem`);
  pack('issued', '-inkey issued.key -in issued.pem -certfile rsa.pem');
  const triple = '-certpbe PBE-SHA1-3DES -keypbe PBE-SHA1-3DES -macalg sha1';
  pack('triple', `-inkey ecdsa.key -in ecdsa.pem ${triple}`);
  pack('plain', '-inkey ecdsa.key -in ecdsa.pem -certpbe NONE -keypbe NONE');
  pack('nokey', '-nokeys -in ecdsa.pem');
  pack('nocert', '-nocerts -inkey ecdsa.key');
});
afterAll(() => rmSync(folder, { recursive: true }));

const open = (name: string, given = secret) => openPkcs12(bytesOf(`${name}.p12`), given, later);
async function refusalOf(name: string, given = secret, at = later) {
  const opened = await openPkcs12(bytesOf(`${name}.p12`), given, at);
  return opened.ok ? undefined : opened.error;
}

describe('the signer’s own PKCS#12 file', () => {
  it.each(['ecdsa', 'rsa', 'issued', 'triple', 'plain'])(
    'opens and seals, and two independent readers take the seal: %s',
    async (name) => {
      const signer = valueOf(await open(name));
      const pdf = valueOf(sealPdf(paper(), signer, { role: 'supervisor', at: later }));
      expect(pdfsigSays(pdf).validations).toEqual(['Signature is Valid.']);
      const [signature] = signaturesIn(pdf);
      expect(opensslSays(signature!, signer.certificate)).toContain(
        'CAdES Verification successful',
      );
      const found = readSeals(pdf);
      expect(found.whole).toBe(true);
      expect(found.seals[0]?.selfSigned).toBe(name !== 'issued');
    },
  );

  it('brings the certificates of those who issued its own', async () => {
    const signer = valueOf(await open('issued'));
    expect([signer.name, signer.organisation, signer.issuers.length]).toEqual([
      'Tome_Vasikora',
      'Oficina',
      1,
    ]);
    const pdf = valueOf(sealPdf(paper(), signer, { role: 'supervisor', at: later }));
    expect(readSeals(pdf).seals[0]?.sentence).toContain('issued by somebody else');
  });

  it('seals the same way twice with RSA, to the byte', async () => {
    const signer = valueOf(await open('rsa'));
    const seal = () => valueOf(sealPdf(paper(), signer, { role: 'supervisor', at: later }));
    expect(Buffer.compare(seal(), seal())).toBe(0);
  });
});

describe('a PKCS#12 file', () => {
  it.each(['ecdsa', 'rsa', 'triple'])('is refused with another passphrase: %s', async (name) => {
    expect((await refusalOf(name, 'agua do poco'))?.code).toBe('wrongPassphrase');
  });

  it('is refused without its key, and without its certificate', async () => {
    expect(await refusalOf('nokey')).toEqual({
      code: 'missingKey',
      sentence:
        'The file holds a certificate without its key, so nothing can be signed with it. Choose the file that holds both.',
    });
    expect((await refusalOf('nocert'))?.code).toBe('missingCertificate');
  });

  it('is refused when its certificate has ended, or not begun', async () => {
    const late = new Date(Date.now() + 40 * 86_400_000).toISOString();
    expect((await refusalOf('ecdsa', secret, late))?.code).toBe('expiredCertificate');
    expect((await refusalOf('ecdsa', secret, now.replace('2026', '2020')))?.code).toBe(
      'earlyCertificate',
    );
  });

  it('is refused with a kind of key that seals are not made with', async () => {
    expect((await refusalOf('other'))?.code).toBe('foreignKey');
  });

  it('is refused when it is none', async () => {
    writeFileSync(path.join(folder, 'none.p12'), 'no file of this kind');
    expect((await refusalOf('none'))?.code).toBe('notAnIdentity');
    writeFileSync(path.join(folder, 'half.p12'), bytesOf('rsa.p12').subarray(0, 900));
    expect((await refusalOf('half'))?.code).toBe('notAnIdentity');
  });
});
