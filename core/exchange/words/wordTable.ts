import type { Material } from '../../record/materials.ts';

type Words = Readonly<Partial<Record<Material, readonly string[]>>>;

/**
 * Words of logs for materials, one group with one source. Words stand in small letters without
 * accents; several in a row are one term. An `s` at the end of nouns and adjectives is understood.
 */
export interface WordGroup {
  /** Where the meanings come from. */
  readonly source: string;
  /** Words that name a material, as in `clay`. */
  readonly nouns?: Words;
  /** Words that name a second material, as in `clayey`. */
  readonly adjectives?: Words;
  /** What a whole cell says where it holds a code: the material and what it is with. */
  readonly codes?: Readonly<Record<string, readonly [Material, ...Material[]]>>;
}
