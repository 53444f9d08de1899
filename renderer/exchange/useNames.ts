import type { TableKind } from '../../core/exchange/tables/fields.ts';
import { choiceWords, fieldWords, say, sheetWords } from '../parts/words.ts';
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

/** The names of a closed list's words, by the field's last key. */
function namesOf(kind: TableKind, key: string): Readonly<Record<string, unknown>> | undefined {
  const { materials, grains, weathering, moisture, fills, pieces, states, methods } = sheetWords();
  if (key === 'kind') return pieces;
  if (key === 'state') return kind === 'levels' ? choiceWords.levelState : states;
  const lists: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
    ...{ material: materials, grain: grains, weathering, moisture, fill: fills, method: methods },
    ...{ boundary: choiceWords.boundary, grainScheme: choiceWords.grainScheme },
    ...{ datum: choiceWords.datum },
  };
  return lists[key];
}

/** A word of a closed list, in the words of the interface. */
export function choiceName(kind: TableKind, field: string, word: string): string {
  const name = namesOf(kind, field.split('.').at(-1)!)?.[word];
  if (typeof name === 'string') return name;
  return (name as { noun?: string } | undefined)?.noun ?? word;
}
