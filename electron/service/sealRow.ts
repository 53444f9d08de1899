import type { SealRow } from '../../core/contract/issuesShape.ts';
import type { FoundSeal } from '../seal/seal.ts';

/** What the page is told of a seal. */
export function sealRow(seal: FoundSeal): SealRow {
  const { state, name, role, at, fingerprint, selfSigned, sentence } = seal;
  return {
    state,
    sentence,
    ...(name === undefined ? {} : { name }),
    ...(role === undefined ? {} : { role }),
    ...(at === undefined ? {} : { at }),
    ...(fingerprint === undefined ? {} : { fingerprint }),
    ...(selfSigned === undefined ? {} : { selfSigned }),
  };
}
