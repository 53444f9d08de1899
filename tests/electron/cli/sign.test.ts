import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSeals } from '../../../electron/seal/readSeals.ts';
import { pdfsigSays } from '../seal/otherReaders.ts';
import { prepareSealing, seal, typeAnswering } from './sealing.ts';
import { ownFolder, type } from './typed.ts';

const read = (folder: string, name: string) =>
  new Uint8Array(readFileSync(path.join(folder, name)));

describe('borefolio sign', () => {
  it('adds a seal with role, place, moment and box', async () => {
    const folder = ownFolder();
    await prepareSealing(folder);
    const { code, out } = await seal(folder, ['--place', 'Lémo', '--box', '1,20,20,45,14']);
    expect(code).toBe(0);
    expect(out[0]).toMatch(
      /^Signed by Ama Dravunké, supervisor\. Fingerprint: ([0-9A-F]{2}:?){32}$/,
    );
    expect(out[1]).toBe('Written: sealed.pdf');
    const sealed = read(folder, 'sealed.pdf');
    expect(pdfsigSays(sealed).validations).toEqual(['Signature is Valid.']);
    const [found] = readSeals(sealed).seals;
    expect(found).toMatchObject({
      name: 'Ama Dravunké',
      role: 'supervisor',
      place: 'Lémo',
      at: '2026-03-02T10:00:00.000Z',
    });
    expect(found?.box).toMatchObject({ page: 1 });
  });

  it('seals in place, one upon another', async () => {
    const folder = ownFolder();
    await prepareSealing(folder);
    for (const role of ['supervisor', 'contractor']) {
      const words = ['sign', 'paper.pdf', '--identity', 'ama.seal', '--role', role];
      expect((await typeAnswering(folder, [...words, '-o', 'paper.pdf'])).code).toBe(0);
    }
    const found = readSeals(read(folder, 'paper.pdf'));
    expect(found.whole).toBe(true);
    expect(found.seals.map(({ role }) => role)).toEqual(['supervisor', 'contractor']);
  });

  it('says why it does not sign', async () => {
    const folder = ownFolder();
    await prepareSealing(folder);
    const words = ['sign', 'paper.pdf', '--identity', 'ama.seal', '--role', 'supervisor'];
    const wrong = await type(folder, [...words, '-o', 'b.pdf'], {
      askSecret: () => Promise.resolve('another one'),
    });
    expect(wrong).toMatchObject({ code: 1 });
    expect(wrong.err[0]).toContain('The passphrase does not open this identity');
    const late = await type(folder, [...words, '-o', 'b.pdf'], {
      askSecret: () => Promise.resolve('quiet river stone'),
      now: () => '2040-01-01T00:00:00Z',
    });
    expect(late.err[0]).toContain('The certificate of Ama Dravunké ended on 2031-03-02');
    const nowhere = await seal(folder, ['-o', 'no/such/folder/b.pdf']);
    expect(nowhere).toMatchObject({ code: 1 });
    expect(nowhere.err[0]).toContain('could not be written');
  });

  it.each([
    [['paper.pdf', '--role', 'x', '-o', 'b.pdf'], 'Say who signs'],
    [['paper.pdf', '--identity', 'ama.seal', '-o', 'b.pdf'], 'Say as what the paper is signed'],
    [['paper.pdf', '--identity', 'ama.seal', '--role', 'x'], 'Say where to write'],
    [['no.pdf', '--identity', 'ama.seal', '--role', 'x', '-o', 'b.pdf'], 'There is no file no.pdf'],
  ])('answers %j with 2 and one sentence', async (words, sentence) => {
    const { code, err } = await type(ownFolder(), ['sign', ...words]);
    expect(code).toBe(2);
    expect(err[0]).toContain(sentence);
  });

  it('answers a box that is none with 2', async () => {
    const folder = ownFolder();
    await prepareSealing(folder);
    const { code, err } = await seal(folder, ['--box', '1,2,3']);
    expect(code).toBe(2);
    expect(err[0]).toContain('PAGE,X,Y,WIDTH,HEIGHT');
  });
});
