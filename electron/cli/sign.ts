import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { readFonts } from '../files/fonts.ts';
import { replaceFile } from '../files/replaceFile.ts';
import { openSigner } from '../seal/openSigner.ts';
import type { SealBox, SealDetails, Signer } from '../seal/seal.ts';
import { sealPdf } from '../seal/sealPdf.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { passphraseOption, readPassphrase } from './passphrase.ts';
import { onlyWord, readBytes } from './readInput.ts';

function readBox(given: Given): Result<SealBox | undefined> {
  const text = textOption(given, 'box');
  if (text === undefined) return ok(undefined);
  const numbers = text.split(',').map(Number);
  const [page, x, y, width, height] = numbers as [number, number, number, number, number];
  if (numbers.length !== 5 || !numbers.every(Number.isFinite))
    return misused(
      '--box takes a page and millimetres from its top left: PAGE,X,Y,WIDTH,HEIGHT, as in 1,20,260,45,14.',
    );
  return ok({ page, x, y, width, height });
}

interface Wanted {
  readonly pdf: Uint8Array;
  readonly identity: Uint8Array;
  readonly role: string;
  readonly place?: string;
  readonly box?: SealBox;
  readonly output: string;
}

function readWanted(given: Given, world: World): Result<Wanted> {
  const [identityFile, role, output, place] = ['identity', 'role', 'output', 'place'].map((name) =>
    textOption(given, name),
  );
  if (identityFile === undefined)
    return misused('Say who signs: --identity FILE.seal or FILE.p12.');
  if (!role?.trim()) return misused('Say as what the paper is signed: --role supervisor.');
  if (output === undefined) return misused('Say where to write: -o FILE.pdf.');
  const word = onlyWord(given.words, 'sign');
  const pdf = word.ok ? readBytes(word.value, world) : word;
  if (!pdf.ok) return pdf;
  const identity = readBytes(identityFile, world);
  if (!identity.ok) return identity;
  const box = readBox(given);
  if (!box.ok) return box;
  return ok({
    pdf: pdf.value,
    identity: identity.value,
    role,
    output,
    ...(place === undefined ? {} : { place }),
    ...(box.value ? { box: box.value } : {}),
  });
}

function detailsOf({ role, place, box }: Wanted, { name }: Signer, at: string): SealDetails {
  const lines = [name, role, at.slice(0, 10)];
  return {
    role,
    at,
    ...(place === undefined ? {} : { place }),
    ...(box ? { shown: { box, lines, face: readFonts().files.regular } } : {}),
  };
}

async function write(output: string, bytes: Uint8Array, world: World): Promise<Result<void>> {
  try {
    await replaceFile(path.resolve(world.folder, output), bytes);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refused('unwritable', `${output} could not be written (${code}): check the place.`);
  }
  return ok(undefined);
}

async function signFile(given: Given, world: World): Promise<Result<ExitCode>> {
  const wanted = readWanted(given, world);
  if (!wanted.ok) return wanted;
  const passphrase = await readPassphrase(given, 'Passphrase: ', world);
  if (!passphrase.ok) return passphrase;
  const at = world.now();
  const signer = await openSigner(wanted.value.identity, passphrase.value, at);
  if (!signer.ok) return signer;
  const { pdf, output } = wanted.value;
  const sealed = sealPdf(pdf, signer.value, detailsOf(wanted.value, signer.value, at));
  if (!sealed.ok) return sealed;
  const { name, fingerprint } = signer.value;
  const written = await write(output, sealed.value, world);
  if (!written.ok) return written;
  const { role } = wanted.value;
  world.report(
    { written: output, name, role, fingerprint },
    `Signed by ${name}, ${role}. Fingerprint: ${fingerprint}`,
    `Written: ${output}`,
  );
  return ok(0);
}

/** `sign`: one more seal on a paper. */
export const sign: Command = {
  name: 'sign',
  takes:
    'PAPER.pdf --identity FILE.seal|FILE.p12 --role ROLE [--place PLACE] [--box PAGE,X,Y,WIDTH,HEIGHT] [--passphrase-file FILE] -o OUT.pdf',
  says: 'Adds a seal to a paper; those that it bears stay as they are',
  options: {
    identity: { type: 'string' },
    role: { type: 'string' },
    place: { type: 'string' },
    box: { type: 'string' },
    output: { type: 'string', short: 'o' },
    ...passphraseOption,
  },
  run: signFile,
};
