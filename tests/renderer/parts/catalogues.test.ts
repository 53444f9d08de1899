import { describe, expect, it } from 'vitest';
import { languages, type Language } from '../../../core/base/language.ts';
import { choiceNames, fieldNames, interfaces } from '../../../renderer/parts/words.ts';
import { refusalTexts } from '../../../renderer/parts/refusals.ts';
import { lacksGlyph } from '../../core/record/phrases/glyphs.ts';

/** What a text is made of, given so that it can be found again in the sentence. */
const places = ['12', '34', '56', '78'];

interface Text {
  readonly place: string;
  readonly said: string;
  /** How many values the text takes; none for a plain one. */
  readonly takes: number;
}

/** Every text of a catalogue; one that takes values is made with several and with one. */
function textsOf(node: unknown, place = ''): Text[] {
  if (typeof node === 'string') return [{ place, said: node, takes: 0 }];
  if (typeof node === 'function') {
    const make = node as (...values: unknown[]) => string;
    const takes = make.length;
    const one = make(1, ...places.slice(1));
    return [
      { place, said: make(...places), takes },
      { place: `${place} of one`, said: one, takes },
    ];
  }
  return Object.entries(node as object).flatMap(([key, inner]) =>
    textsOf(inner, place === '' ? key : `${place}.${key}`),
  );
}

function catalogueOf(language: Language): Text[] {
  const words = interfaces[language];
  const all = { words, field: fieldNames[language], choice: choiceNames[language] };
  // Short codes are letters of words, and have tests of their own.
  return textsOf(all).filter(({ place }) => !place.startsWith('words.codes.'));
}

const catalogues = { en: catalogueOf('en'), fr: catalogueOf('fr'), pt: catalogueOf('pt') };
const english = catalogues.en;
const others = languages.filter((language) => language !== 'en');

/** Signs, compass letters, units, names of standards; words of the shared root beside a figure. */
const wordless =
  /^[\P{L}NSE]*$|^(Borefolio|ISO 14688|Wentworth|\d+ (km?|m|kB|MB)|(code|Photo) \d+|L\w+itude \(WGS 84\))$/u;

/** Words that only English has; letters with marks are letters too. */
const englishWord = /(?<!\p{L})(the|of|is|are|and|with|this|well)(?!\p{L})/u;

/** Words that are the same in two languages, and the sign `i` of a note: checked one by one. */
const shared: Readonly<Record<string, ReadonlySet<string>>> = {
  fr: new Set([
    ...['Description', 'Copies'],
    ...['Archive', 'Village', 'District', 'Commune', 'Site', 'Source', 'Programme', 'latrine'],
    ...['Distance', 'Direction', 'Minutes', 'Dose', 'Contact', 'Version', 'i'],
  ]),
  pt: new Set(['Dose', 'gradual', 'i', 'Q (m³/d)', 's/Q (d/m²)']),
};

describe.each(others)('the interface in %s', (language) => {
  const texts = catalogues[language];

  it('says everything that it says in English, made of the same values', () => {
    const shapes = (all: readonly Text[]) => all.map(({ place, takes }) => `${place}/${takes}`);
    expect(shapes(texts).toSorted()).toEqual(shapes(english).toSorted());
  });

  it('leaves out no value that English names', () => {
    const said = new Map(texts.map((text) => [text.place, text.said]));
    const lost = english.flatMap((text) =>
      places
        .slice(0, text.takes)
        .filter((value) => text.said.includes(value) && !said.get(text.place)!.includes(value))
        .map((value) => `${text.place} without ${value}`),
    );
    expect(lost).toEqual([]);
  });

  it('leaves no English standing', () => {
    const inEnglish = new Map(english.map(({ place, said }) => [place, said]));
    const same = texts
      .filter(({ place, said }) => inEnglish.get(place) === said && !wordless.test(said))
      .map(({ said }) => said);
    expect(same.filter((said) => !shared[language]!.has(said))).toEqual([]);
    const mixed = texts.filter(({ said }) => englishWord.test(said));
    expect(mixed).toEqual([]);
  });

  it('writes its examples with a decimal comma', () => {
    const pointed = texts.filter(({ said }) => /\d\.\d/.test(said) && !/\d,\d/.test(said));
    expect(pointed).toEqual([]);
  });
});

describe.each(languages)('every text in %s', (language) => {
  const refusals = language === 'en' ? [] : textsOf(refusalTexts[language], 'refusal');
  const texts = [...catalogues[language], ...refusals];

  it('is there, without a space at an end or two in a row', () => {
    expect(texts.filter(({ said }) => said === '' || /^\s|\s$|\s\s/.test(said))).toEqual([]);
  });

  it('has a glyph for each letter in the shipped face', () => {
    expect(texts.filter(({ said }) => lacksGlyph(said)).map(({ said }) => said)).toEqual([]);
  });

  it('has typographic quotes and apostrophes', () => {
    expect(texts.filter(({ said }) => /['"]/.test(said))).toEqual([]);
  });

  it('has nothing in it of a value that was not filled in', () => {
    expect(texts.filter(({ said }) => /undefined|NaN|\$\{|\[object/.test(said))).toEqual([]);
  });

  it('tells the words of each list apart', () => {
    const alike = Object.values(choiceNames[language]).filter(
      (words) => new Set(Object.values(words)).size < Object.keys(words).length,
    );
    expect(alike).toEqual([]);
  });
});
