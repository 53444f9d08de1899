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

type Parameters = readonly HeldParameter[];

/** Parameters by each of their names, made once for a set. */
const namesOf = new WeakMap<Parameters, ReadonlyMap<string, HeldParameter>>();

/** Of two with one name the first holds. */
function byName(parameters: Parameters): ReadonlyMap<string, HeldParameter> {
  const known = namesOf.get(parameters);
  if (known) return known;
  const found = new Map<string, HeldParameter>();
  for (const parameter of parameters) {
    const { id, names, aliases } = parameter;
    for (const name of [id, ...Object.values(names), ...aliases].map(plainName))
      if (!found.has(name)) found.set(name, parameter);
  }
  namesOf.set(parameters, found);
  return found;
}

/** The parameter that a result names in any of the three languages; undefined where none is known. */
export function parameterOf(written: string, parameters: Parameters): HeldParameter | undefined {
  const named = byName(parameters);
  const name = candidates(written).find((one) => named.has(one));
  return name === undefined ? undefined : named.get(name);
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
