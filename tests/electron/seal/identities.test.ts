import { X509Certificate } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { makeIdentity } from '../../../electron/seal/makeIdentity.ts';
import { openIdentity } from '../../../electron/seal/openIdentity.ts';
import type { Identity } from '../../../electron/seal/seal.ts';
import { valueOf } from '../archive/sample.ts';
import { now, passphrase } from './sealed.ts';

const wish = { name: 'Délio Kalvāro', passphrase, now, validYears: 5 };

let made: Identity;
beforeAll(async () => {
  made = valueOf(await makeIdentity({ ...wish, organisation: ' Oficina da Água, Lda ' }));
});

type Opened = Awaited<ReturnType<typeof openIdentity>>;
const refusal = (result: Opened | Awaited<ReturnType<typeof makeIdentity>>) =>
  result.ok ? undefined : result.error;

/** The identity's file with something in it changed. */
function changed(change: (file: Record<string, unknown>) => void): Uint8Array {
  const file = JSON.parse(Buffer.from(made.file).toString('utf8')) as Record<string, unknown>;
  change(file);
  return new Uint8Array(Buffer.from(JSON.stringify(file)));
}

describe('an identity', () => {
  it('has a certificate in which the signer names himself, for signing alone', () => {
    const certificate = new X509Certificate(made.signer.certificate);
    expect(certificate.subject).toBe('O=Oficina da Água\\, Lda\nCN=Délio Kalvāro');
    expect(certificate.issuer).toBe(certificate.subject);
    expect(certificate.verify(certificate.publicKey)).toBe(true);
    expect(certificate.ca).toBe(false);
    expect(certificate.publicKey.asymmetricKeyDetails).toEqual({ namedCurve: 'prime256v1' });
    expect(made.signer).toMatchObject({
      name: 'Délio Kalvāro',
      organisation: 'Oficina da Água, Lda',
      selfSigned: true,
      validFrom: '2026-03-04T10:15:00.000Z',
      validTo: '2031-03-04T10:15:00.000Z',
    });
    expect(made.signer.fingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
  });

  it('may be valid beyond 2049, when years are written with four digits', async () => {
    const { signer } = valueOf(await makeIdentity({ ...wish, validYears: 30 }));
    expect(signer.validTo).toBe('2056-03-04T10:15:00.000Z');
  });

  it('opens with its passphrase, however its letters are put together', async () => {
    const composed = { ...wish, passphrase: 'água do poço' };
    const { file, signer } = valueOf(await makeIdentity(composed));
    const opened = valueOf(await openIdentity(file, 'água do poço'.normalize('NFD'), now));
    expect(opened.fingerprint).toBe(signer.fingerprint);
    expect(opened.key.equals(signer.key)).toBe(true);
  });

  it('shows nothing of its key without the passphrase', () => {
    const key = made.signer.key.export({ type: 'pkcs8', format: 'der' });
    const text = Buffer.from(made.file).toString('utf8');
    expect(text).not.toContain(key.toString('base64').slice(40, 80));
    expect(text).not.toContain(passphrase);
    expect(JSON.parse(text)).toMatchObject({ kind: 'borefolio-identity', version: 1 });
  });
});

describe('making an identity', () => {
  it('is refused without a name', async () => {
    expect(refusal(await makeIdentity({ ...wish, name: ' ' }))).toEqual({
      code: 'noName',
      sentence: 'A seal names its signer: give a name.',
    });
  });

  it('is refused with a short passphrase', async () => {
    const error = refusal(await makeIdentity({ ...wish, passphrase: '1234567' }));
    expect(error?.code).toBe('shortPassphrase');
    expect(error?.sentence).toMatch(/^The passphrase is too short: 8 letters at least\./);
  });
});

describe('opening an identity', () => {
  it('is refused with another passphrase', async () => {
    const error = refusal(await openIdentity(made.file, 'Quiet river stone', now));
    expect(error?.code).toBe('wrongPassphrase');
    expect(error?.sentence).toMatch(/^The passphrase does not open this identity\./);
  });

  it('is refused after the certificate’s last moment, and before its first', async () => {
    const late = refusal(await openIdentity(made.file, passphrase, '2031-03-04T10:15:01Z'));
    expect(late).toEqual({
      code: 'expiredCertificate',
      sentence:
        'The certificate of Délio Kalvāro ended on 2031-03-04. Make a new identity, or ask for a new certificate.',
    });
    const early = refusal(await openIdentity(made.file, passphrase, '2026-03-04T10:14:59Z'));
    expect(early).toEqual({
      code: 'earlyCertificate',
      sentence:
        'The certificate of Délio Kalvāro begins only on 2026-03-04. Check this computer’s date.',
    });
  });

  it('is refused where the key is missing', async () => {
    const error = refusal(
      await openIdentity(
        changed((file) => delete file['key']),
        passphrase,
        now,
      ),
    );
    expect(error?.code).toBe('missingKey');
    expect(error?.sentence).toMatch(/^The file holds a certificate without its key/);
  });

  it('is refused where the certificate was exchanged', async () => {
    const other = valueOf(await makeIdentity({ ...wish, name: 'Tomé Vasikora' }));
    const certificate = Buffer.from(other.signer.certificate).toString('base64');
    const file = changed((kept) => Object.assign(kept, { certificate }));
    expect(refusal(await openIdentity(file, passphrase, now))?.code).toBe('wrongPassphrase');
  });

  it('is refused for a file that is none', async () => {
    const files = [
      new Uint8Array(),
      new Uint8Array(Buffer.from('{"kind":"borefolio-identity"}')),
      new Uint8Array(Buffer.from('[null]')),
      changed((file) => Object.assign(file, { version: 2 })),
      changed((file) => Object.assign(file, { certificate: 'AAAA' })),
      changed((file) => Object.assign(file, { key: { cost: -1 } })),
    ];
    for (const file of files)
      expect(refusal(await openIdentity(file, passphrase, now))?.code).toBe('notAnIdentity');
  });

  it('does not take on any amount of work that a file asks for', async () => {
    const file = changed((kept) => Object.assign(kept['key'] as object, { cost: 2 ** 30 }));
    expect(refusal(await openIdentity(file, passphrase, now))?.code).toBe('wrongPassphrase');
  });
});
