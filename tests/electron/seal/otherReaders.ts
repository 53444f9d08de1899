import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** Runs a body with a folder that holds files, and takes all away after it. */
export function inFolder<T>(
  files: Readonly<Record<string, Uint8Array | string>>,
  body: (folder: string) => T,
): T {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-seal-'));
  try {
    for (const [name, content] of Object.entries(files))
      writeFileSync(path.join(folder, name), content);
    return body(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** What pdfsig says of each signature. Its exit status is 0 even for a file that was changed. */
export function pdfsigSays(pdf: Uint8Array): { text: string; validations: string[] } {
  return inFolder({ 'paper.pdf': pdf }, (folder) => {
    const { stdout } = spawnSync('pdfsig', ['-nocert', path.join(folder, 'paper.pdf')], {
      encoding: 'utf8',
    });
    const lines = stdout.matchAll(/Signature Validation: (.*)$/gm);
    return { text: stdout, validations: [...lines].map(([, words]) => words!) };
  });
}

/** What stands between the brackets of each signature's place, and the bytes around it. */
export function signaturesIn(pdf: Uint8Array): { der: Buffer; covered: Buffer }[] {
  const bytes = Buffer.from(pdf);
  const ranges = bytes.toString('latin1').matchAll(/\/ByteRange \[0 (\d+) (\d+) (\d+) *\]/g);
  return [...ranges].map((found) => {
    const [before, after, rest] = found.slice(1).map(Number) as [number, number, number];
    const padded = Buffer.from(bytes.toString('latin1', before + 1, after - 1), 'hex');
    // A sequence with a length of two bytes: ITU-T X.690, 8.1.3.
    const der = padded.subarray(0, 4 + padded.readUInt16BE(2));
    return {
      der,
      covered: Buffer.concat([bytes.subarray(0, before), bytes.subarray(after, after + rest)]),
    };
  });
}

export function pem(certificate: Uint8Array): string {
  const lines = Buffer.from(certificate)
    .toString('base64')
    .match(/.{1,64}/g)!;
  return ['-----BEGIN CERTIFICATE-----', ...lines, '-----END CERTIFICATE-----', ''].join('\n');
}

/** What openssl says of a signature, by a certificate that is taken as known. */
export function opensslSays(
  { der, covered }: { der: Uint8Array; covered: Uint8Array },
  certificate: Uint8Array,
): string {
  const files = { 'sig.der': der, covered, 'known.pem': pem(certificate) };
  return inFolder(files, (folder) => {
    const options =
      'cms -verify -cades -binary -inform DER -in sig.der -content covered -CAfile known.pem -partial_chain -purpose any -out out';
    return spawnSync('openssl', options.split(' '), { cwd: folder, encoding: 'utf8' }).stderr;
  });
}

/** The signature's parts, as openssl prints them. */
export function printedByOpenssl(der: Uint8Array): string {
  return inFolder({ 'sig.der': der }, (folder) =>
    execFileSync('openssl', 'cms -cmsout -print -inform DER -in sig.der'.split(' '), {
      cwd: folder,
      encoding: 'utf8',
    }),
  );
}
