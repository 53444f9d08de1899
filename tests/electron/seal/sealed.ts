import { readFileSync } from 'node:fs';
import { readFonts } from '../../../electron/files/fonts.ts';
import { makeIdentity } from '../../../electron/seal/makeIdentity.ts';
import type { SealDetails, Signer } from '../../../electron/seal/seal.ts';
import { sealPdf } from '../../../electron/seal/sealPdf.ts';
import { makeAsBuilt } from '../../../electron/service/sheet.ts';
import { readDocument } from '../../../electron/service/stored.ts';
import { valueOf } from '../archive/sample.ts';

export const now = '2026-03-04T10:15:00.250Z';
export const passphrase = 'quiet river stone';
const fonts = readFonts();
export const face = fonts.files.regular;

/** The as-built sheet of an invented well, as it is issued. */
export function paper(): Uint8Array {
  const file = new URL('../../../demo-data/shallow-direct-action-9m.json', import.meta.url);
  const { record } = valueOf(readDocument(JSON.parse(readFileSync(file, 'utf8'))));
  return makeAsBuilt(record, { paper: 'A4', fonts, madeAt: now }).pdf();
}

export async function signerCalled(name: string, organisation?: string): Promise<Signer> {
  const given = organisation === undefined ? {} : { organisation };
  const wish = { name, ...given, passphrase, now, validYears: 5 };
  return valueOf(await makeIdentity(wish)).signer;
}

/** Three invented people, who seal one after another. */
export const people = [
  { name: 'Délio Kalvāro', role: 'supervisor', organisation: 'Oficina da Água (Kelumvara)' },
  { name: 'Ama Dravunké', role: 'contractor', place: 'Lémo' },
  { name: 'Tomé Vasikora', role: 'committee' },
] as const;

/** What each of them seals with; the second does not show on the page. */
export function detailsOf(at: number): SealDetails {
  const { name, role, ...more } = people[at]!;
  const place = 'place' in more ? { place: more.place } : {};
  const box = { page: 1, x: 20 + 55 * at, y: 20, width: 45, height: 14 };
  const shown = at === 1 ? {} : { shown: { box, lines: [name, role, '2026-03-04'], face } };
  return { role, ...place, at: now, ...shown };
}

export interface Sealed {
  readonly signers: readonly Signer[];
  /** The paper before any seal, and after each. */
  readonly states: readonly Uint8Array[];
}

export async function sealedByThree(): Promise<Sealed> {
  const signers: Signer[] = [];
  const states = [paper()];
  for (const [at, { name, ...more }] of people.entries()) {
    const signer = await signerCalled(name, 'organisation' in more ? more.organisation : undefined);
    states.push(valueOf(sealPdf(states.at(-1)!, signer, detailsOf(at))));
    signers.push(signer);
  }
  return { signers, states };
}
