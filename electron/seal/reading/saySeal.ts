import type { FoundSeal, FoundSeals } from '../seal.ts';

type Unsaid = Omit<FoundSeal, 'sentence'>;

/** `4 March 2026, 10:15 UTC` would need a language; figures do not. */
function moment(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`;
}

function whose({ number, name, organisation, role, place, at }: Unsaid): string {
  const who = [name ?? 'somebody who cannot be read', organisation, role].filter(Boolean);
  const when = at === undefined ? '' : `, ${moment(at)}`;
  return `Seal ${number}: ${who.join(', ')}${place === undefined ? '' : `, ${place}`}${when}.`;
}

function outcome({ state, coversAll, coversTo }: Unsaid): string {
  switch (state) {
    case 'holds':
      return coversAll
        ? 'It holds, and covers the whole file.'
        : `It holds for the first ${coversTo} bytes; nothing but later seals came after them.`;
    case 'addedTo':
      return `What it covers, the first ${coversTo} bytes, is as it was, but something else than a seal of this program was added to the file after it.`;
    case 'changed':
      return 'It does not hold: the file was changed after it was sealed, or the seal itself was.';
    case 'unreadable':
      return 'It cannot be read: the seal itself was changed, or is of a kind that is not known here.';
  }
}

function trust({ fingerprint, selfSigned, inTime }: Unsaid): string {
  if (fingerprint === undefined) return '';
  const late =
    inTime === false ? ' Its certificate was not valid at the moment that it names.' : '';
  const own = selfSigned ? 'the signer’s own word for the name' : 'issued by somebody else';
  return `${late} The certificate is ${own}: compare its fingerprint with the one that the signer gives you, ${fingerprint}.`;
}

/** Says what was found of a seal: whose it is, whether it holds, what there is to compare. */
export function saySeal(seal: Unsaid): string {
  return [whose(seal), outcome(seal)].join(' ') + (trust(seal) && ` ${trust(seal).trim()}`);
}

function several(count: number, one: string): string {
  return count === 1 ? `one ${one}` : `${count} ${one}s`;
}

/** Says what became of the file as a whole. */
export function sayFile({ state, seals }: Omit<FoundSeals, 'sentence' | 'whole'>): string {
  const count = several(seals.length, 'seal');
  switch (state) {
    case 'none':
      return 'The file bears no seal: whether it was changed cannot be told.';
    case 'whole':
      return `The file bears ${count} and is whole: nothing was changed or added since.`;
    case 'addedTo':
      return seals.at(-1)?.coversAll
        ? `The file bears ${count}, and something else than a seal was added between them: it is not whole.`
        : `The file bears ${count}, and something was added to it after the last signature: it is not whole.`;
    case 'changed':
      return `The file bears ${count} and was changed since it was sealed: do not rely on it.`;
  }
}
