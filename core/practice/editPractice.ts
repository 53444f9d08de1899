import { languages, type Language } from '../base/language.ts';
import type { FigureId } from './figures.ts';
import type { InLanguages, Practice, PracticeFile, Price, Source } from './practice.ts';

/** The same words in every language, until somebody writes them anew in one. */
export function inAll(text: string): InLanguages {
  return { en: text, fr: text, pt: text };
}

/** Words with the text of a language anew: of all languages where they said the same so far. */
export function reworded(words: InLanguages, language: Language, text: string): InLanguages {
  const alike = languages.every((other) => words[other] === words[language]);
  return alike ? inAll(text) : { ...words, [language]: text };
}

/** A new practice that takes everything from another. */
export function basedOn({ id: base, name, scope }: Practice, id: string): PracticeFile {
  return { id, version: '1.0', name, scope, basedOn: base, sources: {}, figures: {} };
}

function leftOut<T extends object>(all: T, key: keyof T & string): T {
  return Object.fromEntries(Object.entries(all).filter(([one]) => one !== key)) as T;
}

/** A practice without sources that no figure names. */
function pruned(file: PracticeFile): PracticeFile {
  const used = Object.values(file.figures).map(({ source }) => source);
  const sources = Object.entries(file.sources).filter(([key]) => used.includes(key));
  return { ...file, sources: Object.fromEntries(sources) };
}

function keyOf(file: PracticeFile, title: string, mark: Source['mark']): string | undefined {
  const entries = Object.entries(file.sources);
  return entries.find(
    ([, source]) =>
      source.mark === mark && languages.some((language) => source.title[language] === title),
  )?.[0];
}

function freeKey({ sources }: PracticeFile): string {
  let at = 1;
  while (`source${at}` in sources) at += 1;
  return `source${at}`;
}

/** A figure as it is set anew, with the words of where it comes from. */
export interface SetFigure {
  readonly value: number;
  readonly title: string;
  readonly mark: Source['mark'];
}

/** Sets a figure; figures with the same words of a source share it. */
export function withFigure(
  file: PracticeFile,
  id: FigureId,
  { value, title, mark }: SetFigure,
): PracticeFile {
  const known = keyOf(file, title, mark);
  const source = known ?? freeKey(file);
  const sources = known
    ? file.sources
    : { ...file.sources, [source]: { title: inAll(title), mark } };
  return pruned({ ...file, sources, figures: { ...file.figures, [id]: { value, source } } });
}

/** Takes a figure again from what the practice is based on. */
export function withoutFigure(file: PracticeFile, id: FigureId): PracticeFile {
  return pruned({ ...file, figures: leftOut(file.figures, id) });
}

/** Asks for a rule, or does not. */
export function withRule(file: PracticeFile, rule: string, asked: boolean): PracticeFile {
  const others = (file.without ?? []).filter((one) => one !== rule);
  return { ...file, without: asked ? others : [...others, rule] };
}

/** Sets what something costs; without a price, it has none of its own. */
export function withPrice(file: PracticeFile, key: string, price?: Price): PracticeFile {
  const prices = leftOut(file.prices ?? {}, key);
  return { ...file, prices: price ? { ...prices, [key]: price } : prices };
}

/** Sets the currency of its prices; an empty text leaves that to what it is based on. */
export function withCurrency(file: PracticeFile, currency: string): PracticeFile {
  const rest = leftOut(file, 'currency');
  return currency === '' ? rest : { ...rest, currency };
}
