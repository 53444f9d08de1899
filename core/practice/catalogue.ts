import type { Finding } from '../base/finding.ts';
import { decimalMarks, type Language } from '../base/language.ts';
import { formatDepth, formatShort } from '../base/numbers.ts';
import { sayUnit } from '../base/sayUnit.ts';
import { bindMarks } from '../base/text/bindMarks.ts';
import { english } from './catalogue/english.ts';
import { french } from './catalogue/french.ts';
import { portuguese } from './catalogue/portuguese.ts';
import type { CatalogueTexts, FindingCode, FindingText } from './catalogue/texts.ts';

export type { FindingCode, FindingText } from './catalogue/texts.ts';

const catalogues: Readonly<Record<Language, CatalogueTexts>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The texts of a language, with their `{places}` still open. */
export function catalogueOf(language: Language): CatalogueTexts {
  return catalogues[language];
}

/** Values that are kinds and have a word in each language; others are the user's own words. */
const kindValues = ['fill', 'other', 'piece', 'earlier', 'later', 'item', 'slope'];

/** Values that may be thousandths, as those of water samples: shown with four digits. */
const fineValues = ['reading', 'allowed'];

/** A value as the sentence shows it: metres to the centimetre, millimetres to a tenth. */
function showValue(name: string, value: string | number, language: Language): string {
  const { words, parameters } = catalogueOf(language);
  if (typeof value === 'string') {
    // A set of the user may bring parameters that have no word.
    if (name === 'parameter') return (parameters as Record<string, string>)[value] ?? value;
    if (name === 'unit') return sayUnit(value, language);
    return kindValues.includes(name) ? (words as Record<string, string>)[value]! : value;
  }
  const mark = decimalMarks[language];
  if (name.endsWith('Mm')) return formatShort(value, 1, mark);
  if (name.endsWith('M')) return formatDepth(value, mark);
  if (fineValues.includes(name)) return formatShort(Number(value.toPrecision(4)), 6, mark);
  return formatShort(value, 2, mark);
}

function upperFirst(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/**
 * A finding in the words of a language, its numbers with that language's mark. Throws on a code
 * that the catalogue does not know, which is a defect: the types see to it that every code has its
 * text.
 */
export function sayFinding(finding: Finding, language: Language = 'en'): FindingText {
  const text = catalogueOf(language).findings[finding.code as FindingCode] as
    FindingText | undefined;
  if (!text) throw new Error(`The catalogue has no text for the finding ${finding.code}.`);
  const { fromM, toM, values } = finding;
  const places: Record<string, string | number | undefined> = { fromM, toM, ...values };
  const fill = (template: string) =>
    upperFirst(
      bindMarks(template).replace(/\{(\w+)\}/g, (place, name: string) => {
        const value = places[name];
        return value === undefined ? place : showValue(name, value, language);
      }),
    );
  return {
    title: fill(text.title),
    sentence: fill(text.sentence),
    why: fill(text.why),
    todo: fill(text.todo),
  };
}
