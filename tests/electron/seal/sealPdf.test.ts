import { X509Certificate } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import type { SealBox, Signer } from '../../../electron/seal/seal.ts';
import { complaintsAbout, pictureOf } from '../../reading/tools.ts';
import { valueOf } from '../archive/sample.ts';
import { opensslSays, pdfsigSays, printedByOpenssl, signaturesIn } from './otherReaders.ts';
import { detailsOf, face, now, people, sealedByThree, type Sealed } from './sealed.ts';

let sealed: Sealed;
let signer: Signer;
beforeAll(async () => {
  sealed = await sealedByThree();
  signer = sealed.signers[0]!;
});

/** The words of an independent reader of PDF signatures. */
const valid = 'Signature is Valid.';

describe('a seal', () => {
  it('is valid alone to an independent reader, and covers the whole file', () => {
    const { text, validations } = pdfsigSays(sealed.states[1]!);
    expect(validations).toEqual([valid]);
    expect(text).toContain('Signature Type: ETSI.CAdES.detached');
    expect(text).toContain('Signing Hash Algorithm: SHA-256');
    expect(text).toContain('Signing Time: Mar 04 2026 10:15:00');
    expect(text).toContain('Total document signed');
  });

  it('leaves those before it valid', () => {
    const { text, validations } = pdfsigSays(sealed.states[3]!);
    expect(validations).toEqual([valid, valid, valid]);
    for (const { name } of people) expect(text).toContain(`Common Name: ${name}`);
    expect(text.match(/Not total document signed/g)).toHaveLength(2);
  });

  it('changes no byte that stands before it', () => {
    const { states } = sealed;
    for (const [at, later] of states.slice(1).entries()) {
      const earlier = states[at]!;
      expect(Buffer.compare(later.subarray(0, earlier.length), earlier)).toBe(0);
    }
  });

  it('is valid by CAdES, each by its own certificate and by no other', () => {
    const signatures = signaturesIn(sealed.states[3]!);
    expect(signatures).toHaveLength(3);
    for (const [at, signature] of signatures.entries()) {
      const { certificate } = sealed.signers[at]!;
      expect(opensslSays(signature, certificate)).toContain('CAdES Verification successful');
      const other = sealed.signers[(at + 1) % 3]!.certificate;
      expect(opensslSays(signature, other)).toContain('Verification failure');
    }
  });

  it('signs what PAdES baseline B asks for, and no time of signing', () => {
    // ETSI EN 319 142-1, 6.3: content-type, message-digest, signing-certificate-v2 (from memory).
    const printed = printedByOpenssl(signaturesIn(sealed.states[1]!)[0]!.der);
    const attributes = printed.slice(printed.indexOf('signedAttrs:'));
    expect([...attributes.matchAll(/object: (\S+)/g)].map(([, name]) => name)).toEqual([
      'contentType',
      'messageDigest',
      'id-smime-aa-signingCertificateV2',
    ]);
    expect(printed).not.toContain('signingTime');
    expect(printed).toMatch(/eContent: <ABSENT>/);
  });

  it('gives a file in which independent readers find nothing to complain of', () => {
    for (const state of sealed.states) expect(complaintsAbout(state)).toBe('');
  });

  it('keeps the document’s id and changes the id of its state', () => {
    const ids = sealed.states.map((state) => {
      const found = Buffer.from(state)
        .toString('latin1')
        .matchAll(/\/ID ?\[ ?<(\w+)> <(\w+)>/g);
      return [...found].at(-1)!.slice(1);
    });
    expect(new Set(ids.map(([document]) => document)).size).toBe(1);
    expect(new Set(ids.map(([, state]) => state)).size).toBe(4);
  });

  it('prints, in its box and nowhere else', () => {
    const before = Buffer.from(pictureOf(sealed.states[0]!, 50));
    const shown = Buffer.from(pictureOf(sealed.states[1]!, 50));
    const hidden = Buffer.from(pictureOf(sealed.states[2]!, 50));
    expect(shown.equals(before)).toBe(false);
    expect(hidden.equals(shown)).toBe(true);
    const text = Buffer.from(sealed.states[3]!).toString('latin1');
    const widgets = [...text.matchAll(/\/Subtype \/Widget.*/g)].map(([widget]) => widget);
    expect(widgets.filter((widget) => widget.includes('/F 4 '))).toHaveLength(3);
    expect(widgets.filter((widget) => widget.includes('/AP'))).toHaveLength(2);
    expect(widgets[1]).toContain('/Rect [0 0 0 0]');
  });

  it('is the same for the same paper, signer and moment, but for the signature itself', () => {
    const again = valueOf(sealPdf(sealed.states[0]!, signer, detailsOf(0)));
    const masked = (pdf: Uint8Array) =>
      Buffer.from(pdf)
        .toString('latin1')
        .replace(/\/Contents <[0-9a-f]+>/, '');
    expect(masked(again)).toBe(masked(sealed.states[1]!));
  });
});

const refusal = (result: ReturnType<typeof sealPdf>) => (result.ok ? undefined : result.error);

describe('sealing', () => {
  it('is refused past the certificate’s time, and before it', () => {
    const late = refusal(
      sealPdf(sealed.states[0]!, signer, { role: 'x', at: '2031-03-05T00:00Z' }),
    );
    expect(late?.code).toBe('expiredCertificate');
    expect(late?.sentence).toContain('ended on 2031-03-04');
    const early = refusal(
      sealPdf(sealed.states[0]!, signer, { role: 'x', at: '2026-03-03T00:00Z' }),
    );
    expect(early?.code).toBe('earlyCertificate');
    expect(early?.sentence).toContain('begins only on 2026-03-04');
  });

  it('is refused for what is no PDF, and for one laid out in another way', () => {
    for (const text of [
      '',
      'no PDF',
      '%PDF-1.7\nstartxref\n0\n%%EOF',
      '%PDF-1.7\nstartxref\n99\n%%EOF',
    ])
      expect(refusal(sealPdf(Buffer.from(text), signer, detailsOf(0)))?.code).toBe('notSealable');
  });

  it('is refused for a box that leaves its page or hides much of it', () => {
    const box = (change: Partial<SealBox>) => ({
      ...detailsOf(0),
      shown: {
        box: { page: 1, x: 20, y: 20, width: 45, height: 14, ...change },
        lines: ['x'],
        face,
      },
    });
    for (const change of [{ page: 9 }, { x: 180 }, { y: -1 }, { width: 130 }, { height: 61 }])
      expect(refusal(sealPdf(sealed.states[0]!, signer, box(change)))?.code).toBe('badBox');
  });

  it('is refused on top of seals that are no longer whole', () => {
    const changed = Uint8Array.from(sealed.states[1]!);
    changed[5000]! ^= 1;
    const error = refusal(sealPdf(changed, signer, detailsOf(1)));
    expect(error?.code).toBe('brokenBefore');
    expect(error?.sentence).toContain('was changed since it was sealed');
  });

  it('takes any text for role and place, and none', () => {
    let pdf = sealed.states[0]!;
    const texts = ['a (b) \\ c', 'ligne 1\nligne 2', '', '𝔸 ɓ', ' '];
    for (const text of texts) {
      const details = { role: text, place: text, at: now };
      pdf = valueOf(sealPdf(pdf, signer, details));
    }
    const found = readSeals(pdf);
    expect(found.whole).toBe(true);
    expect(found.seals.map(({ role = '' }) => role)).toEqual(texts);
  });

  it('names the signer as the certificate does', () => {
    const [first] = readSeals(sealed.states[1]!).seals;
    const certificate = new X509Certificate(signer.certificate);
    expect(first).toMatchObject({
      name: 'Délio Kalvāro',
      organisation: 'Oficina da Água (Kelumvara)',
      role: 'supervisor',
      fingerprint: certificate.fingerprint256,
      at: `${now.slice(0, 19)}.000Z`,
    });
  });
});
