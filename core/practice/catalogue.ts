import type { Finding } from '../base/finding.ts';
import { formatDepth, formatShort } from '../base/numbers.ts';
import { english } from './catalogue/english.ts';
import type { CatalogueTexts, FindingCode, FindingText } from './catalogue/texts.ts';

export type { FindingCode, FindingText } from './catalogue/texts.ts';

const catalogues = { en: english } as const satisfies Record<string, CatalogueTexts>;

export type Language = keyof typeof catalogues;

/** The texts of a language, with their `{places}` still open. */
export function catalogueOf(language: Language): CatalogueTexts {
  return catalogues[language];
}

/** Values that are kinds and have a word in each language; others are the user's own words. */
const kindValues = ['fill', 'other', 'piece'];

/** A value as the sentence shows it: metres to the centimetre, millimetres to a tenth. */
function showValue(name: string, value: string | number, texts: CatalogueTexts): string {
  if (typeof value === 'string')
    return kindValues.includes(name) ? (texts.words as Record<string, string>)[value]! : value;
  if (name.endsWith('Mm')) return formatShort(value, 1, texts.decimalMark);
  if (name.endsWith('M')) return formatDepth(value, texts.decimalMark);
  return formatShort(value, 2, texts.decimalMark);
}

function upperFirst(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/**
 * A finding in words. Throws on a code that the catalogue does not know, which is a defect: the
 * types see to it that every code has its text.
 */
export function sayFinding(finding: Finding, language: Language = 'en'): FindingText {
  const texts = catalogueOf(language);
  const text = texts.findings[finding.code as FindingCode] as FindingText | undefined;
  if (!text) throw new Error(`The catalogue has no text for the finding ${finding.code}.`);
  const { fromM, toM, values } = finding;
  const places: Record<string, string | number | undefined> = { fromM, toM, ...values };
  const fill = (template: string) =>
    upperFirst(
      template.replace(/\{(\w+)\}/g, (place, name: string) => {
        const value = places[name];
        return value === undefined ? place : showValue(name, value, texts);
      }),
    );
  return {
    title: fill(text.title),
    sentence: fill(text.sentence),
    why: fill(text.why),
    todo: fill(text.todo),
  };
}
