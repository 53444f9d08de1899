import type { HeldParameter } from '../guidelines/guidelineSet.ts';
import { openForms } from '../units/convert.ts';
import { readForm } from '../units/readForm.ts';

/** One spelling for all: no accents, no marks, small letters. */
function plainName(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\d]/gu, '');
}

const inBrackets = /[([]([^)\]]*)[)\]]/;

/** The name whole, without what stands in brackets or behind a comma, and what stands there. */
function candidates(written: string): string[] {
  const outside = written.replace(inBrackets, ' ').trim();
  const [first = ''] = outside.split(/[,;:]/);
  const inside = inBrackets.exec(written)?.[1] ?? '';
  return [written, outside, first, inside].map(plainName).filter((name) => name !== '');
}

/** The parameter that a result names in any of the three languages; undefined where none is known. */
export function parameterOf(
  written: string,
  parameters: readonly HeldParameter[],
): HeldParameter | undefined {
  for (const name of candidates(written)) {
    const found = parameters.find(({ id, names, aliases }) =>
      [id, ...Object.values(names), ...aliases].some((alias) => plainName(alias) === name),
    );
    if (found) return found;
  }
  return undefined;
}

const asNitrogen = /nitrogen|azot[eo]\b|nitrog[eé]nio|[\s-]n$|^n[\s-]/i;

/** The form that a result's name tells, as in `NO3-N`; undefined where it leaves it open. */
export function formInName(written: string, parameter: string): string | undefined {
  const forms = openForms(parameter);
  const inside = inBrackets.exec(written)?.[1] ?? '';
  const behind = /\b(?:as|en|como)\s+(\S+)\s*$/i.exec(written)?.[1] ?? '';
  const told = [inside, written, behind].map(readForm).find((form) => form && forms.includes(form));
  if (told !== undefined) return told;
  return forms.includes('N') && asNitrogen.test(written.trim()) ? 'N' : undefined;
}
