import { ok, type Result } from '../../core/base/result.ts';
import { misused, textOption, type Given, type World } from './command.ts';
import { readBytes, textOf } from './readInput.ts';

/** How commands take a passphrase. Never as a word of the command, which other users could read. */
export const passphraseOption = { 'passphrase-file': { type: 'string' } } as const;

const none = () =>
  misused(
    'A passphrase is needed: type it at the terminal, or give --passphrase-file FILE, or set BOREFOLIO_PASSPHRASE.',
  );

/** The first line of the file that was named, else what is answered to the question. */
export async function readPassphrase(
  given: Given,
  question: string,
  world: World,
): Promise<Result<string>> {
  const file = textOption(given, 'passphrase-file');
  if (file === undefined) {
    const answer = await world.askSecret(question);
    return answer === undefined ? none() : ok(answer);
  }
  const bytes = readBytes(file, world);
  return bytes.ok ? ok(textOf(bytes.value).split(/\r?\n/)[0]!) : bytes;
}

/** A passphrase that is to be kept in mind: asked for twice, where a person is asked. */
export async function newPassphrase(given: Given, world: World): Promise<Result<string>> {
  const first = await readPassphrase(given, 'New passphrase: ', world);
  if (!first.ok) return first;
  const again = await readPassphrase(given, 'Once more: ', world);
  if (!again.ok) return again;
  return first.value === again.value
    ? first
    : misused('The two passphrases are not the same: nothing was made. Try again.');
}
