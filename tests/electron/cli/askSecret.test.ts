import { PassThrough } from 'node:stream';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { askSecret, promptSecret } from '../../../electron/cli/askSecret.ts';

afterEach(() => vi.unstubAllEnvs());

/** A terminal at which something is typed; tells the answer and all that was shown. */
async function typed(keys: string) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const answer = promptSecret('Passphrase: ', input, output);
  input.write(keys);
  return { answer: await answer, shown: String(output.read()) };
}

describe('a passphrase', () => {
  it('is typed without being shown', async () => {
    expect(await typed('água do poço\r')).toEqual({
      answer: 'água do poço',
      shown: 'Passphrase: \n',
    });
  });

  it('is mended with the backspace key', async () => {
    expect((await typed('watter\u007f\u007f\u007fer\r')).answer).toBe('water');
  });

  it('is none when the question is broken off', async () => {
    expect((await typed('wat\u0003')).answer).toBeUndefined();
  });

  it('comes from the environment without a question', async () => {
    vi.stubEnv('BOREFOLIO_PASSPHRASE', 'from outside');
    expect(await askSecret('Passphrase: ')).toBe('from outside');
  });
});
