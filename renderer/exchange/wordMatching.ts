import type { UnknownWords } from '../../core/contract/importsShape.ts';
import type { Match } from './matching.ts';

type Place = Pick<UnknownWords, 'file' | 'sheet' | 'kind' | 'field' | 'column'>;

/** A word of a column and what it becomes; null says nothing, undefined is not chosen. */
interface Named {
  readonly text: string;
  readonly word: string | null | undefined;
}

const isTable = ({ file, sheet }: Match, place: Place) =>
  file === place.file && sheet === place.sheet;

/** What a matching makes of a word of a column. */
export function wordOf(
  matches: readonly Match[],
  place: Place,
  text: string,
): string | null | undefined {
  const match = matches.find((one) => isTable(one, place));
  const fields = match?.kinds.find(({ kind }) => kind === place.kind)?.fields;
  const source = fields?.[place.field]?.find(({ column }) => column === place.column);
  const word = Object.hasOwn(source?.words ?? {}, text) ? source!.words![text] : undefined;
  return Array.isArray(word) ? word.join(', ') : word;
}

/** The matchings with a word of a column named. */
export function withWord(
  matches: readonly Match[],
  place: Place,
  { text, word }: Named,
): readonly Match[] {
  return matches.map((match) => ({
    ...match,
    kinds: match.kinds.map((one) => {
      const sources = one.fields[place.field];
      if (!isTable(match, place) || one.kind !== place.kind || !sources) return one;
      const named = sources.map((source) => {
        if (source.column !== place.column) return source;
        const rest = Object.entries(source.words ?? {}).filter(([key]) => key !== text);
        const words = word === undefined ? rest : [...rest, [text, word] as const];
        return { ...source, words: Object.fromEntries(words) };
      });
      return { ...one, fields: { ...one.fields, [place.field]: named } };
    }),
  }));
}
