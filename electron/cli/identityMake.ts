import { existsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { makeIdentity } from '../seal/makeIdentity.ts';
import type { Identity } from '../seal/seal.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { newPassphrase, passphraseOption } from './passphrase.ts';

const usualYears = 5;
const mostYears = 30;

interface Wanted {
  readonly name: string;
  readonly organisation?: string;
  readonly years: number;
  readonly file: string;
}

function readWanted(given: Given, world: World): Result<Wanted> {
  if (given.words.length > 0) return misused(`${given.words.join(' ')} is too much.`);
  const name = textOption(given, 'name');
  if (name === undefined) return misused('Say whose identity it is: --name "NAME".');
  const output = textOption(given, 'output');
  if (output === undefined) return misused('Say where to write it: --output FILE.seal.');
  const file = path.resolve(world.folder, output);
  if (existsSync(file))
    return misused(`${output} is there already: choose a new name. An identity is never replaced.`);
  const years = Number(textOption(given, 'years') ?? usualYears);
  if (!Number.isInteger(years) || years < 1 || years > mostYears)
    return misused(`--years takes a whole number from 1 to ${mostYears}.`);
  const organisation = textOption(given, 'organisation');
  return ok({ name, years, file, ...(organisation === undefined ? {} : { organisation }) });
}

/** For the person alone who made it, and never over another. */
function write(file: string, { file: bytes }: Identity): Result<void> {
  try {
    writeFileSync(file, bytes, { flag: 'wx', mode: 0o600 });
    return ok(undefined);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused('unwritable', `${file} could not be written (${code}): check the place.`);
  }
}

async function make(given: Given, world: World): Promise<Result<ExitCode>> {
  const wanted = readWanted(given, world);
  if (!wanted.ok) return wanted;
  const passphrase = await newPassphrase(given, world);
  if (!passphrase.ok) return passphrase;
  const { file, years: validYears, ...named } = wanted.value;
  const wish = { ...named, passphrase: passphrase.value, now: world.now(), validYears };
  const made = await makeIdentity(wish);
  if (!made.ok) return made;
  const written = write(file, made.value);
  if (!written.ok) return written;
  const { name, validTo, fingerprint } = made.value.signer;
  const output = textOption(given, 'output');
  world.report(
    { written: output, name, validTo, fingerprint },
    `Written: ${output}`,
    `Signs for ${name} until ${validTo.slice(0, 10)}.`,
    `Fingerprint: ${fingerprint}`,
    'Nobody but the signer vouches for the name: hand the fingerprint to those who check.',
  );
  return ok(0);
}

/** `identity make`: what a person signs with, under a passphrase. */
export const identityMake: Command = {
  name: 'identity make',
  takes:
    '--name NAME [--organisation NAME] [--years N] [--passphrase-file FILE] --output FILE.seal',
  says: 'Makes what a person seals papers with; its key is kept under a passphrase',
  options: {
    name: { type: 'string' },
    organisation: { type: 'string' },
    years: { type: 'string' },
    output: { type: 'string', short: 'o' },
    ...passphraseOption,
  },
  run: make,
};
