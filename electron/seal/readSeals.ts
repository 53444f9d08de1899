import { isInTime, type Holder } from './identity/signerOf.ts';
import { letters } from './pdf/document.ts';
import { checkSignature, type CheckedSignature } from './reading/checkSignature.ts';
import { coversItsPart, findSignatures, type Signature } from './reading/findSignatures.ts';
import { isOnlyASeal, sealBoxAtEnd } from './reading/lawfulUpdate.ts';
import { readSignatureText } from './reading/readText.ts';
import { sayFile, saySeal } from './reading/saySeal.ts';
import type { FoundSeal, FoundSeals, ReadSeals, SealState, SealedState } from './seal.ts';

/** A signature with what was checked of it; `coversTo` is 0 where it covers no known part. */
interface Looked {
  readonly signature: Signature;
  readonly checked: CheckedSignature;
  readonly coversTo: number;
}

interface File {
  readonly bytes: Uint8Array;
  readonly text: string;
}

function look({ bytes, text }: File, signature: Signature): Looked {
  if (!coversItsPart(signature, bytes.length))
    return {
      signature,
      checked: { digestHolds: false, signatureHolds: false },
      coversTo: 0,
    };
  const [, , after, rest] = signature.range;
  return { signature, checked: checkSignature(bytes, text, signature), coversTo: after + rest };
}

/** Ends of the parts after which something else than a seal was written. */
function addedToAt({ bytes }: File, looked: readonly Looked[]): readonly number[] {
  const ends = looked.map(({ coversTo }) => coversTo).filter((end) => end > 0);
  return ends.filter((end, at) => {
    const next = ends[at + 1];
    if (next === undefined) return end < bytes.length;
    return !isOnlyASeal(bytes.subarray(0, end), bytes.subarray(0, next));
  });
}

function stateOf({ checked, coversTo }: Looked, added: readonly number[]): SealState {
  const { holder, digestHolds, signatureHolds } = checked;
  if (coversTo > 0 && holder === undefined) return 'unreadable';
  if (!digestHolds || !signatureHolds) return 'changed';
  return added.some((end) => end >= coversTo) ? 'addedTo' : 'holds';
}

function holderFacts(holder: Holder, at: string | undefined) {
  const { name, organisation, fingerprint, selfSigned } = holder;
  return {
    name,
    ...(organisation === undefined ? {} : { organisation }),
    fingerprint,
    selfSigned,
    ...(at === undefined ? {} : { inTime: isInTime(holder, at) }),
  };
}

function told(file: File, one: Looked, number: number, added: readonly number[]): FoundSeal {
  const { signature, coversTo, checked } = one;
  const words = readSignatureText(file.text, signature.entries);
  const { holder, digestHolds, signatureHolds } = checked;
  const box = coversTo > 0 ? sealBoxAtEnd(file.bytes.subarray(0, coversTo)) : undefined;
  const seal = {
    number,
    state: stateOf(one, added),
    ...words,
    ...(holder ? holderFacts(holder, words.at) : {}),
    coversTo,
    coversAll: coversTo === file.bytes.length,
    digestHolds,
    signatureHolds,
    ...(box ? { box } : {}),
  };
  return { ...seal, sentence: saySeal(seal) };
}

function fileState(seals: readonly FoundSeal[]): SealedState {
  if (seals.length === 0) return 'none';
  if (seals.some(({ state }) => state === 'changed' || state === 'unreadable')) return 'changed';
  return seals.some(({ state }) => state === 'addedTo') ? 'addedTo' : 'whole';
}

/** Reads and checks every signature of a PDF, whoever made it. */
export const readSeals: ReadSeals = (bytes): FoundSeals => {
  const file = { bytes, text: letters(bytes) };
  const looked = findSignatures(file.text)
    .map((signature) => look(file, signature))
    .sort((a, b) => a.coversTo - b.coversTo);
  const added = addedToAt(file, looked);
  const seals = looked.map((one, at) => told(file, one, at + 1, added));
  const state = fileState(seals);
  return { state, whole: state === 'whole', seals, sentence: sayFile({ state, seals }) };
};
