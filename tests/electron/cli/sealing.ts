import { type, type Typed } from './typed.ts';

export const passphrase = 'quiet river stone';
const answered = { askSecret: () => Promise.resolve(passphrase) };

/** Types a command at which a person gives the passphrase. */
export function typeAnswering(folder: string, args: readonly string[]): Promise<Typed> {
  return type(folder, args, answered);
}

/** Makes the demo archive, a paper of one of its wells and an identity, in a folder. */
export async function prepareSealing(folder: string): Promise<void> {
  const paper = ['paper', 'as-built', 'a.borefolio', '--well', 'KV-25-011', '-o', 'paper.pdf'];
  const identity = ['identity', 'make', '--name', 'Ama Dravunké', '-o', 'ama.seal'];
  await type(folder, ['demo-archive', 'a.borefolio']);
  for (const args of [paper, identity]) {
    const { code, err } = await typeAnswering(folder, args);
    if (code !== 0) throw new Error(err.join('\n'));
  }
}

/** Seals a paper of a folder. */
export function seal(folder: string, more: readonly string[] = []): Promise<Typed> {
  const words = ['sign', 'paper.pdf', '--identity', 'ama.seal', '--role', 'supervisor'];
  return typeAnswering(folder, [...words, '-o', 'sealed.pdf', ...more]);
}
