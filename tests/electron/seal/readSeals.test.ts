import { beforeAll, describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/base/random.ts';
import { signStatement, writeSignedData } from '../../../electron/seal/cms/signedData.ts';
import { readDocument } from '../../../electron/seal/pdf/document.ts';
import { updateOf } from '../../../electron/seal/pdf/update.ts';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import { readSignedData } from '../../../electron/seal/cms/readSignedData.ts';
import { valueOf } from '../archive/sample.ts';
import { pdfsigSays, signaturesIn } from './otherReaders.ts';
import { detailsOf, sealedByThree, signerCalled, type Sealed } from './sealed.ts';

let sealed: Sealed;
let thrice: Uint8Array;
beforeAll(async () => {
  sealed = await sealedByThree();
  thrice = sealed.states[3]!;
});

function withByte(pdf: Uint8Array, at: number, value: number): Uint8Array {
  const changed = Uint8Array.from(pdf);
  changed[at] = value;
  return changed;
}

const letters = (pdf: Uint8Array) => Buffer.from(pdf).toString('latin1');

/** The last seal's place, between its brackets. */
function lastPlace(): { start: number; end: number } {
  const start = letters(thrice).lastIndexOf('/Contents <') + '/Contents <'.length;
  return { start, end: letters(thrice).indexOf('>', start) };
}

/** Objects written behind a file as any program may do. */
function addedTo(pdf: Uint8Array, objects: Record<number, string>): Uint8Array {
  const update = updateOf(
    readDocument(pdf),
    new Map(Object.entries(objects).map(([number, text]) => [Number(number), text])),
  );
  return new Uint8Array(Buffer.concat([pdf, Buffer.from(update, 'latin1')]));
}

describe('the seals of a file that nobody changed', () => {
  it('hold, each for its part, and the file is whole', () => {
    const found = readSeals(thrice);
    expect([found.state, found.whole]).toEqual(['whole', true]);
    expect(found.sentence).toBe(
      'The file bears 3 seals and is whole: nothing was changed or added since.',
    );
    expect(found.seals.map(({ state, coversAll }) => [state, coversAll])).toEqual([
      ['holds', false],
      ['holds', false],
      ['holds', true],
    ]);
    expect(found.seals.map(({ coversTo }) => coversTo)).toEqual(
      sealed.states.slice(1).map(({ length }) => length),
    );
  });

  it('are told with signer, role, place, moment and fingerprint', () => {
    const [first, second] = readSeals(thrice).seals;
    const { fingerprint } = sealed.signers[0]!;
    expect(first?.sentence).toBe(
      `Seal 1: Délio Kalvāro, Oficina da Água (Kelumvara), supervisor, 2026-03-04 10:15 UTC. It holds for the first ${first?.coversTo} bytes; nothing but later seals came after them. The certificate is the signer’s own word for the name: compare its fingerprint with the one that the signer gives you, ${fingerprint}.`,
    );
    expect(second?.sentence).toContain('Seal 2: Ama Dravunké, contractor, Lémo,');
    expect([first?.selfSigned, first?.inTime]).toEqual([true, true]);
    expect(first?.box?.page).toBe(1);
    expect(first?.box?.x).toBeCloseTo(20, 3);
    expect(first?.box?.height).toBeCloseTo(14, 3);
    expect(second?.box).toBeUndefined();
  });

  it('are none in a file without, of which nothing can be told', () => {
    const found = readSeals(sealed.states[0]!);
    expect([found.state, found.whole, found.seals]).toEqual(['none', false, []]);
    expect(readSeals(new Uint8Array()).state).toBe('none');
  });
});

describe('a byte changed', () => {
  /** 500 places and other values for them, the same in every run. */
  function changes(): { at: number; value: number }[] {
    const random = seededRandom(20260304);
    return Array.from({ length: 500 }, () => {
      const at = Math.floor(random() * thrice.length);
      return { at, value: (thrice[at]! + 1 + Math.floor(random() * 255)) % 256 };
    });
  }

  it('is found wherever it stands, in 500 trials', () => {
    const missed = changes().filter(
      ({ at, value }) => readSeals(withByte(thrice, at, value)).whole,
    );
    expect(missed).toEqual([]);
  }, 180_000);

  it('is found in the last seal’s own place, which nothing covers', () => {
    const { start, end } = lastPlace();
    const written = 2 * signaturesIn(thrice)[2]!.der.length;
    const missed: number[] = [];
    for (let at = start; at < end; at += at < start + written ? 7 : 97) {
      const digit = letters(thrice)[at] === '8' ? '0' : '8';
      if (readSeals(withByte(thrice, at, digit.charCodeAt(0))).whole) missed.push(at);
    }
    for (const other of [' ', 'F', 'x'])
      if (readSeals(withByte(thrice, start + 9, other.charCodeAt(0))).whole) missed.push(start + 9);
    expect(missed).toEqual([]);
  }, 180_000);

  it('is found where a digit of the signature is written as a capital', () => {
    const { start } = lastPlace();
    const at = start + /[a-f]/.exec(letters(thrice).slice(start))!.index;
    const found = readSeals(withByte(thrice, at, letters(thrice)[at]!.toUpperCase().charCodeAt(0)));
    expect(found.seals.map(({ state }) => state)).toEqual(['holds', 'holds', 'changed']);
  });

  it('is found by an independent reader too, outside the last seal’s place', () => {
    const { start, end } = lastPlace();
    const sample = changes()
      .filter(({ at }) => at < start || at >= end)
      .slice(0, 20);
    const missed = sample.filter(({ at, value }) => {
      const { validations } = pdfsigSays(withByte(thrice, at, value));
      return validations.filter((words) => words === 'Signature is Valid.').length === 3;
    });
    expect(sample).toHaveLength(20);
    expect(missed).toEqual([]);
  });

  it('breaks every seal that stands over it, and says so', () => {
    const found = readSeals(withByte(thrice, 5000, thrice[5000]! ^ 1));
    expect(found.seals.map(({ state }) => state)).toEqual(['changed', 'changed', 'changed']);
    expect(found.sentence).toBe(
      'The file bears 3 seals and was changed since it was sealed: do not rely on it.',
    );
    expect(found.seals[0]?.sentence).toContain('It does not hold: the file was changed after');
  });

  it('leaves those seals as they are that end before it', () => {
    const at = sealed.states[1]!.length + 20;
    const found = readSeals(withByte(thrice, at, thrice[at]! ^ 1));
    expect(found.seals[0]).toMatchObject({ digestHolds: true, signatureHolds: true });
    expect(found.seals[1]?.digestHolds).toBe(false);
    expect(found.state).toBe('changed');
  });
});

describe('a file cut off', () => {
  it('behind an earlier seal is as that seal left it, which no seal can prevent', () => {
    const found = readSeals(thrice.subarray(0, sealed.states[2]!.length));
    expect([found.whole, found.seals.length]).toEqual([true, 2]);
  });

  it('elsewhere is no longer whole', () => {
    const found = readSeals(thrice.subarray(0, sealed.states[2]!.length + 200));
    expect(found.state).toBe('addedTo');
  });
});

describe('what is added behind a seal', () => {
  it('is told, even a single byte', () => {
    const found = readSeals(new Uint8Array(Buffer.concat([thrice, Buffer.from('\n')])));
    expect(found.state).toBe('addedTo');
    expect(found.seals.every(({ state, digestHolds }) => state === 'addedTo' && digestHolds)).toBe(
      true,
    );
    expect(found.sentence).toContain('something was added to it after the last signature');
  });

  it('is told when a page was exchanged, although the seals are valid to other readers', () => {
    const page = readDocument(thrice).offsets.get(3)!;
    expect(letters(thrice).slice(page)).toMatch(/^3 0 obj\s+<<\s*\/Type \/Page\s/);
    const exchanged = addedTo(thrice, { 3: '<< /Type /Page /Parent 1 0 R >>' });
    expect(readSeals(exchanged).state).toBe('addedTo');
    expect(pdfsigSays(exchanged).validations).toHaveLength(3);
  });

  it('is told when it hides below a later seal', async () => {
    const exchanged = addedTo(sealed.states[1]!, { 999: '(anything)' });
    const other = await signerCalled('Ama Dravunké');
    const onTop = valueOf(sealPdf(sealed.states[1]!, other, detailsOf(1)));
    expect(readSeals(onTop).whole).toBe(true);
    const refused = sealPdf(exchanged, other, detailsOf(1));
    expect(refused.ok).toBe(false);
  });
});

describe('a signature in another’s name', () => {
  it('does not hold with a certificate that was exchanged for another of the same key', async () => {
    const signer = sealed.signers[2]!;
    const { start, end } = lastPlace();
    const read = readSignedData(signaturesIn(thrice)[2]!.der);
    const other = await signerCalled('Tomé Vasikora');
    const der = writeSignedData(
      { digest: read.digest, certificate: other.certificate, issuers: [] },
      signStatement(
        { digest: read.digest, certificate: other.certificate, issuers: [] },
        signer.key,
      ),
    );
    const digits = Buffer.from(der)
      .toString('hex')
      .padEnd(end - start, '0');
    const text = letters(thrice);
    const forged = Buffer.from(text.slice(0, start) + digits + text.slice(end), 'latin1');
    const found = readSeals(new Uint8Array(forged)).seals[2];
    expect([found?.digestHolds, found?.signatureHolds, found?.state]).toEqual([
      true,
      false,
      'changed',
    ]);
  });

  it('cannot be read when it is cut short', () => {
    const { start } = lastPlace();
    const text = letters(thrice);
    const cut = text.slice(0, start) + '00' + text.slice(start + 2);
    const found = readSeals(new Uint8Array(Buffer.from(cut, 'latin1'))).seals[2];
    expect([found?.state, found?.fingerprint]).toEqual(['unreadable', undefined]);
    expect(found?.sentence).toContain('It cannot be read');
  });
});
