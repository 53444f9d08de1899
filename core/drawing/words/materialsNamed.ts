import { languages, type Language } from '../../base/language.ts';
import { searchWords } from '../../base/text/searchWords.ts';
import { materials, type Material } from '../../record/materials.ts';
import { sheetWordsIn } from './languages.ts';

/** A material with one of its names, as a sheet writes it. */
export interface NamedMaterial {
  readonly material: Material;
  readonly name: string;
}

/** Letters from which on a beginning names a material; a shorter word has to be the whole of one. */
const enough = 4;

/** The noun, and the adjective of second parts in all its forms. */
function namesOf(material: Material, language: Language): readonly string[] {
  const { materials: words, agreement } = sheetWordsIn(language);
  const { noun, second } = words[material];
  if (second.includes(' ')) return [noun];
  return [noun, second, ...Object.values(agreement[second] ?? {})];
}

/** Every name by its words; `other` has none, since it stands for what the log says besides. */
const named: readonly (NamedMaterial & { readonly words: readonly string[] })[] = languages.flatMap(
  (language) =>
    materials
      .filter((material) => material !== 'other')
      .flatMap((material) =>
        namesOf(material, language).map((name) => ({ material, name, words: searchWords(name) })),
      ),
);

/**
 * The materials that a word names, or begins to name, in any of the page's languages, each with
 * one such name. Fewer than four letters name only what they are the whole word of, as `sel`.
 */
export function materialsNamed(typed: string): readonly NamedMaterial[] {
  const [wanted = ''] = searchWords(typed);
  if (wanted === '') return [];
  const begins = (word: string) =>
    word === wanted || (wanted.length >= enough && word.startsWith(wanted));
  const found = new Map<Material, string>();
  for (const { material, name, words } of named)
    if (!found.has(material) && words.some(begins)) found.set(material, name);
  return [...found].map(([material, name]) => ({ material, name }));
}
