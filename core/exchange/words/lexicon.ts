import type { Material } from '../../record/materials.ts';
import { codes } from './codes.ts';
import { dutch } from './dutch.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { grammar, type GrammarWord } from './grammar.ts';
import { portuguese } from './portuguese.ts';
import type { WordGroup } from './wordTable.ts';

/** What a term of the tables is in a description. */
export type Meaning =
  | { readonly kind: 'noun' | 'adjective'; readonly material: Material }
  | { readonly kind: GrammarWord };

export const wordGroups: readonly WordGroup[] = [
  ...english,
  ...french,
  ...portuguese,
  ...dutch,
  ...codes,
];

/** Small letters without accents, so that each word stands once in the tables. */
export function plainWords(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('œ', 'oe');
}

/** A Map, since a description may hold words such as `constructor`. */
function gather(): ReadonlyMap<string, Meaning> {
  const terms = new Map<string, Meaning>();
  for (const [kind, words] of Object.entries(grammar))
    for (const word of words) terms.set(word, { kind: kind as GrammarWord });
  for (const { nouns, adjectives } of wordGroups) {
    for (const [material, words] of Object.entries(nouns ?? {}))
      for (const word of words) terms.set(word, { kind: 'noun', material: material as Material });
    for (const [material, words] of Object.entries(adjectives ?? {}))
      for (const word of words)
        terms.set(word, { kind: 'adjective', material: material as Material });
  }
  return terms;
}

const terms = gather();

/** Words in the longest term of the tables. */
export const longestTerm = Math.max(...[...terms.keys()].map((term) => term.split(' ').length));

const withoutPlural = (term: string) => term.replace(/s$/, '');

/** What a term means, in one number or the other; undefined where the tables do not have it. */
export function meaningOf(term: string): Meaning | undefined {
  const exact = terms.get(term);
  if (exact) return exact;
  const single = terms.get(withoutPlural(term));
  return single && 'material' in single ? single : undefined;
}

const meantByCode = new Map(wordGroups.flatMap((group) => Object.entries(group.codes ?? {})));

/** The materials of a code that fills a cell by itself. */
export function materialsOfCode(text: string): readonly [Material, ...Material[]] | undefined {
  return meantByCode.get(plainWords(text.trim()));
}
