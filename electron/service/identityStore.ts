import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';
import { replaceFile } from '../files/replaceFile.ts';

const kept = z.object({
  fingerprint: z.string(),
  name: z.string(),
  organisation: z.string().exactOptional(),
  validTo: z.string(),
  selfSigned: z.boolean(),
  /** The file with the key under its passphrase, base64. */
  file: z.string(),
});

/** A certificate with its key, which only its passphrase opens. */
export type KeptIdentity = z.infer<typeof kept>;

/** Where the certificates are kept that sign on this computer. They belong to no archive. */
export interface IdentityStore {
  list(): Promise<readonly KeptIdentity[]>;
  /** Takes the place of the one with its fingerprint. Throws what the disk says. */
  put(identity: KeptIdentity): Promise<void>;
  remove(fingerprint: string): Promise<void>;
}

/** The folder for certificates that goes with a file of settings. */
export const identitiesBeside = (settingsFile: string) =>
  path.join(path.dirname(settingsFile), 'identities');

const ending = '.identity.json';
const fileOf = (fingerprint: string) => `${fingerprint.replaceAll(':', '').toLowerCase()}${ending}`;

async function namesIn(folder: string): Promise<string[]> {
  try {
    return (await readdir(folder)).filter((name) => name.endsWith(ending)).sort();
  } catch {
    // Nobody signed on this computer yet.
    return [];
  }
}

async function readKept(file: string): Promise<KeptIdentity[]> {
  try {
    const read = kept.safeParse(JSON.parse(await readFile(file, 'utf8')));
    return read.success ? [read.data] : [];
  } catch {
    return [];
  }
}

/** One file for each, readable by its owner alone where the system knows that. */
export function identitiesIn(folder: string): IdentityStore {
  const place = (fingerprint: string) => path.join(folder, fileOf(fingerprint));
  return {
    async list() {
      const names = await namesIn(folder);
      return (await Promise.all(names.map((name) => readKept(path.join(folder, name))))).flat();
    },
    async put(identity) {
      await mkdir(folder, { recursive: true, mode: 0o700 });
      await replaceFile(place(identity.fingerprint), `${JSON.stringify(identity, undefined, 2)}\n`);
    },
    remove: (fingerprint) => rm(place(fingerprint), { force: true }),
  };
}

/** Certificates that are kept in memory alone. */
export function passingIdentities(): IdentityStore {
  const held = new Map<string, KeptIdentity>();
  return {
    list: () => Promise.resolve([...held.values()]),
    put: (identity) => Promise.resolve(void held.set(identity.fingerprint, identity)),
    remove: (fingerprint) => Promise.resolve(void held.delete(fingerprint)),
  };
}
