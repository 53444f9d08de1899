import { readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openIdentity } from '../../../electron/seal/openIdentity.ts';
import { valueOf } from '../archive/sample.ts';
import { passphrase, typeAnswering } from './sealing.ts';
import { ownFolder, type } from './typed.ts';

const make = ['identity', 'make', '--name', 'Ama Dravunké', '-o', 'ama.seal'];
const now = '2026-03-02T10:00:00.000Z';

describe('borefolio identity make', () => {
  it('makes an identity that its passphrase opens, and tells its fingerprint', async () => {
    const folder = ownFolder();
    const words = [...make, '--organisation', 'Oficina da Água', '--years', '2'];
    const { code, out } = await typeAnswering(folder, words);
    expect(code).toBe(0);
    const file = path.join(folder, 'ama.seal');
    const signer = valueOf(await openIdentity(readFileSync(file), passphrase, now));
    expect([signer.name, signer.organisation]).toEqual(['Ama Dravunké', 'Oficina da Água']);
    expect(out).toEqual([
      'Written: ama.seal',
      'Signs for Ama Dravunké until 2028-03-02.',
      `Fingerprint: ${signer.fingerprint}`,
      'Nobody but the signer vouches for the name: hand the fingerprint to those who check.',
    ]);
    if (process.platform !== 'win32') expect(statSync(file).mode & 0o077).toBe(0);
  });

  it('takes the passphrase from the first line of a file', async () => {
    const folder = ownFolder();
    writeFileSync(path.join(folder, 'secret.txt'), `${passphrase}\r\nmore\n`);
    expect((await type(folder, [...make, '--passphrase-file', 'secret.txt'])).code).toBe(0);
    const file = readFileSync(path.join(folder, 'ama.seal'));
    expect((await openIdentity(file, passphrase, now)).ok).toBe(true);
  });

  it('never replaces an identity', async () => {
    const folder = ownFolder();
    writeFileSync(path.join(folder, 'ama.seal'), 'kept');
    const { code, err } = await typeAnswering(folder, make);
    expect(code).toBe(2);
    expect(err).toEqual([
      'ama.seal is there already: choose a new name. An identity is never replaced.',
    ]);
    expect(readFileSync(path.join(folder, 'ama.seal'), 'utf8')).toBe('kept');
  });

  it.each([
    [['identity', 'make', '-o', 'a.seal'], 'Say whose identity it is'],
    [['identity', 'make', '--name', 'A'], 'Say where to write it'],
    [[...make, 'more'], 'more is too much'],
    [[...make, '--years', '0'], '--years takes a whole number from 1 to 30'],
    [make, 'A passphrase is needed: type it at the terminal'],
    [[...make, '--passphrase-file', 'none.txt'], 'There is no file none.txt'],
  ])('answers %j with 2 and one sentence', async (words, sentence) => {
    const { code, err } = await type(ownFolder(), words);
    expect(code).toBe(2);
    expect(err).toHaveLength(1);
    expect(err[0]).toContain(sentence);
  });

  it('is refused with two passphrases that differ, and with a short one', async () => {
    const answers = ['one passphrase', 'another one'];
    const askSecret = () => Promise.resolve(answers.shift());
    const differing = await type(ownFolder(), make, { askSecret });
    expect(differing.err[0]).toContain('The two passphrases are not the same');
    const short = await type(ownFolder(), make, { askSecret: () => Promise.resolve('short') });
    expect(short).toMatchObject({ code: 1 });
    expect(short.err[0]).toContain('The passphrase is too short');
  });
});
