import type { FillKind } from '../../record/annulus.ts';

/** A word of the record in plain English: `madeGround` is `made ground`. */
export const inWords = (word: string) => word.replace(/[A-Z]/g, (one) => ` ${one.toLowerCase()}`);

/** The word of a list that a text is in plain English; undefined where it is none. */
export function fromWords<T extends string>(list: readonly T[], text: string | undefined) {
  const wanted = text?.trim().toLowerCase();
  return list.find((word) => inWords(word) === wanted);
}

/** Sand round a slotted pipe is its pack too. The first that fits counts. */
const fillWords: readonly (readonly [RegExp, FillKind])[] = [
  [/stabili[sz]er/, 'formationStabiliser'],
  [/collapse|cave/, 'naturalCollapse'],
  [/concrete/, 'concrete'],
  [/grout|cement|mortar/, 'cementGrout'],
  [/bentonite/, 'bentonite'],
  [/clay/, 'claySeal'],
  [/sand|gravel|filter/, 'gravelPack'],
  [/arising|backfill|spoil|cuttings/, 'backfill'],
  [/void/, 'open'],
];

/** The fill that somebody's English words name; undefined where they name none, as a cover. */
export function fillOfWords(words: string): FillKind | undefined {
  return fillWords.find(([pattern]) => pattern.test(words.toLowerCase()))?.[1];
}
