import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

/** Programs that start this one hand the passphrase in here. */
const variable = 'BOREFOLIO_PASSPHRASE';

/** Asks at a terminal, without showing what is typed. Undefined when it is broken off. */
export function promptSecret(
  question: string,
  input: NodeJS.ReadableStream,
  output: NodeJS.WritableStream,
): Promise<string | undefined> {
  output.write(question);
  const unseen = new Writable({ write: (_chunk, _encoding, done) => done() });
  const reader = createInterface({ input, output: unseen, terminal: true });
  return new Promise((resolve) => {
    reader.once('line', (line) => resolve(line));
    reader.once('SIGINT', () => resolve(undefined));
    reader.once('close', () => resolve(undefined));
  }).then((answer) => {
    reader.close();
    output.write('\n');
    return answer as string | undefined;
  });
}

/** A passphrase from the environment, else from the terminal; undefined where there is neither. */
export function askSecret(question: string): Promise<string | undefined> {
  const given = process.env[variable];
  if (given !== undefined) return Promise.resolve(given);
  if (!process.stdin.isTTY) return Promise.resolve(undefined);
  return promptSecret(question, process.stdin, process.stderr);
}
