import type { LogInterval } from '../../record/log.ts';
import type { Material } from '../../record/materials.ts';
import { materialsOfCode } from './lexicon.ts';
import { partsOf, type Part } from './parts.ts';

type Qualifier = NonNullable<LogInterval['qualifiers']>[number];

/** What a description says of the ground. */
export interface UnderstoodWords {
  /** `other` where the words name no material for certain. */
  readonly material: Material;
  readonly qualifiers: readonly Qualifier[];
  readonly known: boolean;
}

const unknown: UnderstoodWords = { material: 'other', qualifiers: [], known: false };

/** Longer texts tell a story; what the ground is stands at their beginning. */
const readAtMost = 1000;

type Named = Part & { readonly material: Material };

const isNoun = (part: Part | undefined): part is Named => part?.kind === 'noun';
const isEither = (part: Part | undefined) => part?.kind === 'or' || part?.kind === 'stroke';
const grains: readonly Material[] = ['sand', 'gravel', 'cobbles', 'boulders'];
const loose: readonly Material[] = [
  ...grains,
  ...(['clay', 'silt', 'peat', 'mud', 'topsoil', 'soil', 'madeGround', 'loess'] as const),
];
/** A heading that stands before or after a description of what it is made of. */
const headings: readonly Material[] = ['madeGround', 'topsoil'];
/** Too general to be a second material. */
const general: readonly Material[] = [
  'rock',
  'soil',
  'cavity',
  'noSample',
  'topsoil',
  'madeGround',
];

const isRock = (material: Material) => !loose.includes(material) && !general.includes(material);

/** Sentences, without those on a second material alone, as in "Gravel is fine". */
function sentencesOf(text: string): string[] {
  const sentences = text.slice(0, readAtMost).split(/\.(?=\s|$)|[\r\n]+/);
  return sentences.filter((one) => !/^\s*\p{L}+\s+(is|are|est|sont)\s/iu.test(one));
}

/** Up to the word from which another state or depth is described. */
function upToEnd(parts: readonly Part[]): Part[] {
  const end = parts.findIndex(({ kind }) => kind === 'end');
  return end < 0 ? [...parts] : parts.slice(0, end);
}

/** Takes out what is said not to be there: up to two words after "without". */
function withoutAbsent(parts: readonly Part[]): Part[] {
  const denied = (at: number) =>
    parts.slice(Math.max(0, at - 2), at).some(({ kind }) => kind === 'without');
  return parts.filter((part, at) => !('material' in part) || !denied(at));
}

/** "Limestone gravel": of a rock and grains beside each other the grains are meant. */
function withoutMakings(parts: readonly Part[]): Part[] {
  return parts.filter((part, at) => {
    const next = parts[at + 1];
    const makes = isNoun(part) && isRock(part.material) && isNoun(next);
    return !(makes && grains.includes(next.material));
  });
}

/** After "with", rocks in a row before grains say what the grains are of. */
function withoutListedMakings(parts: readonly Part[]): Part[] {
  const start = parts.findIndex(({ kind }) => kind === 'with');
  if (start < 0) return [...parts];
  return parts.filter((part, at) => {
    if (at < start || !isNoun(part) || !isRock(part.material)) return true;
    const rest = parts.slice(at + 1);
    const other = rest.findIndex(
      (one) => !['comma', 'and', 'or'].includes(one.kind) && !(isNoun(one) && isRock(one.material)),
    );
    const end = rest[other];
    return !(isNoun(end) && grains.includes(end.material));
  });
}

/** The noun that a description is about, or why there is none. */
function principalAt(parts: readonly Part[]): number | undefined {
  const heading = parts.findIndex((part) => isNoun(part) && headings.includes(part.material));
  if (heading >= 0) return heading;
  const capital = parts.findIndex((part) => isNoun(part) && part.capitals);
  if (capital >= 0) return capital;
  const at = parts.findIndex(isNoun);
  return at < 0 || isUncertain(parts, at) ? undefined : at;
}

/** Another reading is as good: the words do not say which noun is the main one. */
function isUncertain(parts: readonly Part[], at: number): boolean {
  const before = parts.slice(0, at);
  const [next, afterNext] = parts.slice(at + 1);
  return (
    next?.kind === 'part' ||
    next?.kind === 'size' ||
    before.some(({ kind }) => kind === 'with' || kind === 'or') ||
    (isEither(next) && afterNext !== undefined && 'material' in afterNext) ||
    // "Brown clay gravel": gravel in English order, clay in the order of lists.
    (isNoun(next) && before.length > 0)
  );
}

function degreeOf(before: Part | undefined): Pick<Qualifier, 'degree'> {
  return before?.kind === 'slightly' || before?.kind === 'very' ? { degree: before.kind } : {};
}

/** Second materials in the order in which they are told, each once. */
function qualifiersOf(parts: readonly Part[], principal: number): Qualifier[] {
  const { material } = parts[principal] as Named;
  const found = new Map<Material, Qualifier>();
  parts.forEach((part, at) => {
    if (at === principal || !('material' in part) || part.material === material) return;
    const sized = isNoun(part) && parts[at + 1]?.kind === 'size';
    const either = isEither(parts[at - 1]) || isEither(parts[at + 1]);
    const left = general.includes(part.material) || sized || either;
    if (left || found.has(part.material)) return;
    found.set(part.material, { material: part.material, ...degreeOf(parts[at - 1]) });
  });
  return [...found.values()];
}

/** A heading that is only possible is no heading; any other doubt leaves all open. */
function withoutDoubt(parts: readonly Part[]): Part[] | undefined {
  const doubt = parts.findIndex(({ kind }) => kind === 'doubt' || kind === 'query');
  if (doubt < 0) return [...parts];
  const next = parts[doubt + 1];
  const aboutHeading = isNoun(next) && headings.includes(next.material);
  return aboutHeading ? withoutDoubt(parts.slice(doubt + 2)) : undefined;
}

function understandSentence(sentence: string): UnderstoodWords | undefined {
  const sure = withoutDoubt(upToEnd(partsOf(sentence)));
  if (!sure) return unknown;
  const parts = withoutListedMakings(withoutMakings(withoutAbsent(sure)));
  if (!parts.some(isNoun)) return undefined;
  const at = principalAt(parts);
  if (at === undefined) return unknown;
  const { material } = parts[at] as Named;
  return { material, qualifiers: qualifiersOf(parts, at), known: true };
}

/**
 * The material and second materials that a description or code names, in English, French or
 * Portuguese. Whole words of a reviewed table alone are taken, and where they can be read in two
 * ways nothing is: the material is then `other`. The words themselves are for the caller to keep.
 */
export function understandWords(text: string): UnderstoodWords {
  const code = materialsOfCode(text);
  if (code) {
    const [material, ...seconds] = code;
    return { material, qualifiers: seconds.map((second) => ({ material: second })), known: true };
  }
  for (const sentence of sentencesOf(text)) {
    const understood = understandSentence(sentence);
    if (understood) return understood;
  }
  return unknown;
}
