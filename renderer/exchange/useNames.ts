import { fieldWords, say } from '../parts/words.ts';
import { fieldOf, isCasingTop, wellUse } from './matching.ts';

/** What a column is taken for, in the words of the interface. */
export function useName(use: string): string {
  const words = say.imports;
  if (use === '') return words.notTaken;
  if (use === wellUse) return words.wellKey;
  if (use === 'log.material') return words.understood;
  const key = fieldOf(use).split('.').at(-1)!;
  if (key === 'aroundDiameter') return words.aroundDiameter;
  const named: unknown =
    key === 'string' ? fieldWords.strings : fieldWords[key as keyof typeof fieldWords];
  const name = typeof named === 'string' ? named : key;
  return isCasingTop(use) ? `${name}, ${words.casingTop}` : name;
}
